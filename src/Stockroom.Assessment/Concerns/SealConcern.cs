using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Losses.WeighIns;

namespace Stockroom.Assessment.Concerns;

/// <summary>Seals that fail, shown by weigh-ins.</summary>
public sealed class SealConcern : IConcern
{
    public IEnumerable<WrongItem> Find(StockAssessment stock) =>
        from holding in stock.Holdings
        where holding.Seal is { State: SealState.Failing or SealState.Rising or SealState.Above }
        let seal = holding.Seal!
        select new WrongItem(
            seal.IsAlarm ? Severity.Warning : Severity.Notice,
            "seal",
            seal.State switch
            {
                SealState.Failing => $"The seal of {holding.Content.Name} on {holding.PlaceName} is failing: close it anew, or change the closure",
                SealState.Above => $"{holding.Content.Name} on {holding.PlaceName} loses more than its closure usually lets go: weigh it again soon",
                _ => $"{holding.Content.Name} on {holding.PlaceName} gains mass: something gets in",
            },
            seal.Because,
            "weigh-ins against the forecast for its closure",
            seal.Measured?.From,
            [holding.Id]);
}
