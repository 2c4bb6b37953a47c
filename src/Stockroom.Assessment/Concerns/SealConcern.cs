using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Losses.WeighIns;

namespace Stockroom.Assessment.Concerns;

/// <summary>Seals that fail, shown by weigh-ins.</summary>
public sealed class SealConcern : IConcern
{
    public IEnumerable<WrongItem> Find(StockAssessment stock) =>
        from holding in stock.Holdings
        where holding.Seal is { State: SealState.Failing or SealState.Rising }
        let failing = holding.Seal!.State == SealState.Failing
        select new WrongItem(
            Severity.Warning,
            "seal",
            failing
                ? $"The seal of {holding.Content.Name} on {holding.PlaceName} is failing: close it anew, or change the closure"
                : $"{holding.Content.Name} on {holding.PlaceName} gains mass: something gets in",
            holding.Seal!.Because,
            "weigh-ins against the forecast for its closure",
            holding.Seal!.Measured?.From,
            [holding.Id]);
}
