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

    // The container that is in most of the pairs is the one to act on; of equals, the one that the sentence names first.
    private static IReadOnlyList<ContainerId> Concerned(Finding finding) =>
        [.. finding.Pairs
            .SelectMany(p => new[] { (Key: p.A, Label: p.ALabel), (Key: p.B, Label: p.BLabel) })
            .GroupBy(k => k)
            .OrderByDescending(g => g.Count())
            .ThenBy(g => NamedAt(finding.Cause, g.Key.Label))
            .ThenBy(g => g.Key.Key, StringComparer.Ordinal)
            .Select(g => ContainerId.Parse(g.Key.Key))];

    private static int NamedAt(string sentence, string label)
    {
        var at = sentence.IndexOf(label, StringComparison.OrdinalIgnoreCase);
        return at < 0 ? int.MaxValue : at;
    }
}
