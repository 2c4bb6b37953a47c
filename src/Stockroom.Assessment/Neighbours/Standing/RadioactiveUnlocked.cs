using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Holdings;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>
/// Radiation falls with distance and stops for no glass: what is above the activity exempt from notification stands locked up and
/// away from people, where the keeper has said that a place is not locked. Activities are computed from the amount.
/// </summary>
/// <remarks>Source: Council Directive 2013/59/Euratom, Annex VII Table B, for the level; locking up is common practice.</remarks>
internal sealed class RadioactiveUnlocked : IPlaceRule
{
    // Elements whose nuclides live longer than this are sold and shown as ordinary ones: rubidium, lanthanum, rhenium.
    private static readonly Span OrdinaryFrom = Span.FromYears(1e10);

    public IEnumerable<PlaceFinding> Find(StockAssessment stock)
    {
        foreach (var place in PlaceWords.By(stock, h => h.Limits.IsLocked == false && Share(h, stock) > 0))
        {
            var share = place.Holdings.Sum(h => Share(h, stock));
            if (share <= 1)
                continue;
            yield return PlaceWords.Finding(
                "radioactive in a place that is not locked",
                $"{PlaceWords.Subject(place.Holdings, "stands", "stand")} on {place.Place.Name}, which is not locked: {Words(share)} the activity exempt from notification. Keep it under lock, marked, and away from where people sit.",
                "toxic product", $"{ExemptionActivities.Default.Source}; locking up: common practice", Severity.Warning, place.Place, place.Holdings);
        }
    }

    // Sum of each nuclide's activity over its exempt activity; 0 where the amount is not known.
    private static double Share(Holding holding, StockAssessment stock)
    {
        if (holding.Situation is not { } situation)
            return 0;
        var sum = 0.0;
        foreach (var part in situation.Content.Parts)
        {
            foreach (var share in stock.Facts.Properties.Nuclides(part.Substance))
            {
                if (share.Nuclide.HalfLife.Seconds > OrdinaryFrom.Seconds && !ExemptionActivities.Default.Lists(share.Nuclide.Name))
                    continue;
                var kilograms = situation.Amount.Kilograms * (double)part.Percent / 100 * share.MassShare.Value;
                sum += kilograms * share.Nuclide.SpecificActivity.BecquerelsPerKilogram / ExemptionActivities.Default.Of(share.Nuclide.Name).Becquerels;
            }
        }

        return sum;
    }

    private static string Words(double share) => share < 10 ? $"{share:0.#} times" : $"{share:0} times";
}
