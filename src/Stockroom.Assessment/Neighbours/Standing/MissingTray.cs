using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Holdings;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>
/// Mercury and perchloric acid always stand in a tray; any other corrosive liquid where its shelf has trays, which shows that they were meant
/// for it. Source: common practice, from memory.
/// </summary>
internal sealed class MissingTray : IPlaceRule
{
    private const decimal PerchloricFromPercent = 50m;

    public IEnumerable<PlaceFinding> Find(StockAssessment stock)
    {
        foreach (var (place, holdings) in PlaceWords.By(stock, h => AlwaysNeeds(h) && Stands(h)))
        {
            yield return PlaceWords.Finding(
                "liquid without a tray",
                $"{PlaceWords.Subject(holdings, "stands", "stand")} on {place.Name} in no tray: from a broken bottle it runs over the whole shelf. Set it in a leak-tight tray, or in a can with absorbent.",
                "toxic product", "common practice: mercury and strong perchloric acid in a tray that holds all of it, from memory", Severity.Warning, place, holdings);
        }

        foreach (var (place, holdings) in PlaceWords.By(stock, h => !AlwaysNeeds(h) && h.Profile.IsCorrosiveLiquid && !h.Content.IsUnknown && Stands(h) && HasTrays(h.Path[^1], stock)))
        {
            yield return PlaceWords.Finding(
                "liquid without a tray",
                $"{PlaceWords.Subject(holdings, "stands", "stand")} on {place.Name} beside its trays and not in one. Set corrosive liquids in a leak-tight tray.",
                "corrosion", "common practice: corrosive liquids in trays, from memory", Severity.Warning, place, holdings);
        }
    }

    private static bool Stands(Holding holding) => !holding.IsFlameSealed && !holding.IsHeldIfItLeaks();

    private static bool AlwaysNeeds(Holding holding) =>
        !holding.Content.IsUnknown
        && (holding.Profile.Carries("mercury") || holding.Content.PercentOf("perchloric acid") >= PerchloricFromPercent);

    private static bool HasTrays(Place place, StockAssessment stock) =>
        stock.State.PlacesInside(place.Id).Any(p => p.Level == PlaceLevel.Tray && p.Limits.LeakTight == true);
}
