using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Rounds;

/// <summary>The rules of the rounds, and how deep a cover must stand, as the tables give them. Immutable.</summary>
public sealed class RoundRules
{
    private static readonly Lazy<RoundRules> Embedded = new(Read);

    private static readonly Dictionary<string, CountFrom> CountedFrom = new(StringComparer.Ordinal)
    {
        ["opened"] = CountFrom.Opened,
        ["received"] = CountFrom.Received,
        ["unopened"] = CountFrom.Unopened,
    };

    private RoundRules(IReadOnlyList<RoundRule> rules, IReadOnlyList<CoverMinimum> covers)
    {
        Rules = rules;
        CoverMinimums = covers;
    }

    /// <summary>The rules that come with the program.</summary>
    public static RoundRules Default => Embedded.Value;

    public IReadOnlyList<RoundRule> Rules { get; }

    public IReadOnlyList<CoverMinimum> CoverMinimums { get; }

    /// <summary>The look that every container gets.</summary>
    public RoundRule Review => Rules.Single(r => r.IsForAny);

    /// <summary>The rules made for a content, by its name or its only substance.</summary>
    public IEnumerable<RoundRule> For(Content content) =>
        Rules.Where(r => r.Subjects.Contains(content.Name) || (content.Pure is { } pure && r.Subjects.Contains(pure.Name)));

    private static RoundRules Read()
    {
        var names = SubstanceCatalogue.Default.AllNames.ToHashSet(StringComparer.Ordinal);
        var rules = EmbeddedTables.Facts(
            "round-rules.tsv", "rule", "subjects", "what", "counted_from", "first_days", "repeat_days", "reset_by", "because", "at_limit").Rows
            .Select(r => new RoundRule(
                r.Text("rule"),
                Subjects(r, names),
                r.Text("what"),
                r.OneOf("counted_from", CountedFrom),
                r.Integer("first_days"),
                r.Integer("repeat_days"),
                r.Text("reset_by"),
                r.Text("because"),
                r.Text("at_limit"),
                r.Provenance))
            .ToList();
        var covers = EmbeddedTables.Facts("cover-minimums.tsv", "subject", "cover", "minimum_mm", "because").Rows
            .Select(r => new CoverMinimum(Known(r, "subject", r.Text("subject"), names), Known(r, "cover", r.Text("cover"), names), r.Decimal("minimum_mm"), r.Text("because"), r.Provenance))
            .ToList();
        return new RoundRules(rules, covers);
    }

    private static IReadOnlyList<string> Subjects(TableRow row, HashSet<string> names) =>
        [.. row.List("subjects").Select(s => s == "any" ? s : Known(row, "subjects", s, names))];

    private static string Known(TableRow row, string column, string name, HashSet<string> names) =>
        names.Contains(name) ? name : throw row.Wrong(column, $"'{name}' is not in the catalogue");
}

/// <summary>How deep a liquid cover must stand over what it protects, in millimetres.</summary>
public sealed record CoverMinimum(string Subject, string Cover, decimal MinimumMillimetres, string Because, Provenance Provenance);
