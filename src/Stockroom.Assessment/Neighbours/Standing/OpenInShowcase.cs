using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Holdings;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>A show-case holds no corrosive, fuming or highly flammable liquid but in a flame-sealed ampoule. Source: common museum practice, from memory.</summary>
internal sealed class OpenInShowcase : IPlaceRule
{
    private static readonly string[] Families = ["halogen", "mercury", "white-phosphorus", "osmium-oxide", "acid-chloride"];

    public IEnumerable<PlaceFinding> Find(StockAssessment stock) =>
        from place in PlaceWords.By(stock, h => h.Cabinet()?.Kind == PlaceKind.DisplayCase && !h.IsFlameSealed && !h.Content.IsUnknown && DoesNotBelong(h))
        select PlaceWords.Finding(
            "open to the air of a show-case",
            $"{PlaceWords.Subject(place.Holdings, "stands", "stand")} in {place.Holdings[0].Cabinet()!.Name} in a vessel that is not sealed in the flame: what it breathes out stays in the case. Show it in a flame-sealed ampoule, or keep it elsewhere.",
            "corrosion", "common museum practice: nothing that fumes in a show-case, from memory", Severity.Warning, place.Place, place.Holdings);

    private static bool DoesNotBelong(Holding holding) =>
        holding.Profile.IsCorrosiveLiquid || Families.Any(holding.Profile.Carries) || holding.HasCategory("Flam. Liq. 1", "Flam. Liq. 2");
}
