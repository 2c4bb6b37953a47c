using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Vessels;

namespace Stockroom.Assessment.Concerns;

/// <summary>Flame-sealed ampoules that can burst.</summary>
public sealed class AmpouleConcern : IConcern
{
    public IEnumerable<WrongItem> Find(StockAssessment stock) =>
        from holding in stock.Holdings
        where holding.Ampoule is { Verdict: FillVerdict.Unsafe or FillVerdict.NeverSeal } or { Verdict: FillVerdict.Marginal, IsNearBursting: true }
        let fill = holding.Ampoule!
        select new WrongItem(
            fill.Verdict == FillVerdict.Marginal ? Severity.Warning : Severity.Danger,
            "ampoule",
            fill.Verdict switch
            {
                FillVerdict.NeverSeal => $"{holding.Content.Name} on {holding.PlaceName} makes gas and must never be sealed in glass",
                FillVerdict.Unsafe => $"The ampoule of {holding.Content.Name} on {holding.PlaceName} can burst: bring it to a cool place, behind a shield",
                _ => $"The ampoule of {holding.Content.Name} on {holding.PlaceName} is near what its glass bears: keep it cool",
            },
            string.Join("; ", fill.Because),
            "liquid density, vapour pressure and EN 1595 tube strength, as the forecast explains",
            holding.Container.SealedOn,
            [holding.Id]);
}
