using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Neighbours;
using Stockroom.Book;

namespace Stockroom.Assessment.Concerns;

/// <summary>What stands nearer than it may.</summary>
public sealed class NeighbourConcern : IConcern
{
    public IEnumerable<WrongItem> Find(StockAssessment stock) => stock.Findings.Select(f => new WrongItem(
        f.Separation >= Separation.OwnCabinet ? Severity.Danger : Severity.Warning,
        "neighbours",
        f.Cause,
        f.Rule,
        f.Verified ? f.Source.ToString() : $"{f.Source} (not read again for this rule)",
        null,
        Concerned(f)));

    // The container that is in most of the pairs is the one to act on.
    private static IReadOnlyList<ContainerId> Concerned(Finding finding) =>
        [.. finding.Pairs
            .SelectMany(p => new[] { p.A, p.B })
            .GroupBy(k => k, StringComparer.Ordinal)
            .OrderByDescending(g => g.Count())
            .ThenBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => ContainerId.Parse(g.Key))];
}
