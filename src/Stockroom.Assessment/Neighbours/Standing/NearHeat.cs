using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Holdings;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>What heat sets off does not stand next to a hot thing. Source: precautionary statement P210 and the statements that bring it, CLP Annex IV.</summary>
internal sealed class NearHeat : IPlaceRule
{
    private static readonly HashSet<string> SetOffByHeat = new(StringComparer.Ordinal)
    {
        "H200", "H201", "H202", "H203", "H204", "H206", "H207", "H208", "H220", "H221", "H222", "H224", "H225", "H226", "H228", "H229",
        "H240", "H241", "H242", "H250", "H251", "H252", "H270", "H271", "H272", "H280",
    };

    public IEnumerable<PlaceFinding> Find(StockAssessment stock) =>
        from place in PlaceWords.By(stock, h => h.Limits.IsNearHeat == true && h.Classification.StatementCodes.Any(SetOffByHeat.Contains))
        select PlaceWords.Finding(
            "set off by heat, next to a hot thing",
            $"{PlaceWords.Subject(place.Holdings, "stands", "stand")} on {place.Place.Name}, next to something hot: heat can set it off. Move it to a cool place.",
            "fire", "CLP Annex IV, P210: keep away from heat", Severity.Danger, place.Place, place.Holdings);
}
