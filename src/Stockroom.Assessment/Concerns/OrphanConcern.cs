using Stockroom.Assessment.Holdings;

namespace Stockroom.Assessment.Concerns;

/// <summary>Containers of which nobody knows what they hold.</summary>
public sealed class OrphanConcern : IConcern
{
    public IEnumerable<WrongItem> Find(StockAssessment stock) =>
        from holding in stock.Holdings
        where holding.Content.IsUnknown
        let seen = holding.Container.Seen is { } s && s != holding.Content.Name ? $" ({s})" : ""
        select new WrongItem(
            Severity.Warning,
            "orphan",
            $"Contents unknown on {holding.PlaceName}: {holding.Content.Name}{seen}. Have it identified, or taken away as unknown",
            holding.ContentProblem ?? $"an orphan{(holding.Container.FoundBy is { } by ? $", found by {by}" : "")}; it is judged as the worst it could be in every respect",
            "common practice: an unlabelled container is treated as hazardous until it is known",
            holding.Container.ReceivedOn,
            [holding.Id]);
}
