using System.Globalization;
using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Holdings;
using Stockroom.Book.Containers;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>
/// A place whose warmest day passes the boiling point of a liquid that is not sealed in the flame, or the melting point of an element kept solid.
/// Source: boiling and melting points of the property tables; the consequence is physics.
/// </summary>
internal sealed class WarmerThanItBears : IPlaceRule
{
    public IEnumerable<PlaceFinding> Find(StockAssessment stock)
    {
        foreach (var holding in stock.Holdings.Where(h => h.Path.Count > 0))
        {
            if (holding.Limits.MaxCelsius is not { } warmest || holding.Content.Pure is not { } pure)
                continue;
            var boils = pure.State == MatterState.Liquid && pure.DissolvedFormOf is null && !holding.IsFlameSealed;
            var melts = pure.State == MatterState.Solid && pure.Element is not null;
            var fact = boils ? stock.Facts.Properties.BoilingPoint(pure) : melts ? stock.Facts.Properties.MeltingPoint(pure) : null;
            if (fact?.Value is not { } point || point.Celsius > (double)warmest)
                continue;
            var figures = string.Create(CultureInfo.InvariantCulture, $"{point.Celsius:0.#} C, and it is up to {warmest:0.#} C there");
            yield return PlaceWords.Finding(
                boils ? "warmer than its boiling point" : "warmer than its melting point",
                boils
                    ? $"{PlaceWords.Subject([holding], "boils", "boil")} at {figures} on {holding.PlaceName}: the bottle would blow its stopper. Move it to a cooler place."
                    : $"{PlaceWords.Subject([holding], "melts", "melt")} at {figures} on {holding.PlaceName}: it would run. Move it to a cooler place, or see that its vessel holds it molten.",
                boils ? "pressure" : "structural failure", fact.Provenance?.ToString() ?? "property tables", boils ? Severity.Danger : Severity.Warning, holding.Path[^1], [holding]);
        }
    }
}
