using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Holdings;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>Lead and its alloys corrode in the acids that wood and board breathe out. Source: common museum practice, from memory.</summary>
internal sealed class LeadInWood : IPlaceRule
{
    private const decimal FromPercent = 10m;

    public IEnumerable<PlaceFinding> Find(StockAssessment stock) =>
        from place in PlaceWords.By(stock, h => IsLead(h) && !h.IsFlameSealed && h.Limits.IsWooden == true)
        select PlaceWords.Finding(
            "lead in a wooden case",
            $"{PlaceWords.Subject(place.Holdings, "stands", "stand")} on {place.Place.Name} in a case of wood: wood breathes out acids that turn lead into a white powder. Move it to metal or glass, or seal it in.",
            "corrosion", "common museum practice: no lead in wooden cases, from memory", Severity.Warning, place.Place, place.Holdings);

    private static bool IsLead(Holding holding) => holding.Content.Parts.Any(p => p.Substance.Element == "Pb" && p.Percent >= FromPercent);
}
