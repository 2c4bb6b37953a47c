using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Holdings;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>What light spoils stands in the dark or in brown glass. Only where a place is known to be in daylight and the vessel to be clear.</summary>
internal sealed class LightOnSensitive : IPlaceRule
{
    public IEnumerable<PlaceFinding> Find(StockAssessment stock)
    {
        foreach (var holding in stock.Holdings.Where(h => h.Path.Count > 0 && h.Limits.Light == PlaceLight.Window && IsInClearGlass(h, stock)))
        {
            if (LightSensitivity.Default.Of(holding.Content) is not { } spoiled)
                continue;
            yield return PlaceWords.Finding(
                "spoiled by light",
                $"{PlaceWords.Subject([holding], "stands", "stand")} in clear glass in daylight on {holding.PlaceName}: {spoiled.Effect}. Keep it in brown glass or in the dark.",
                spoiled.Would, spoiled.Source.ToString(), Severity.Notice, holding.Path[^1], [holding]);
        }
    }

    private static bool IsInClearGlass(Holding holding, StockAssessment stock) =>
        holding.Container.Vessel is { } name && !name.StartsWith("amber", StringComparison.Ordinal) && stock.Facts.Wares.FindVessel(name)?.IsGlass == true;
}
