using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>One rule by which a pictogram gives way to another.</summary>
/// <param name="Present">The pictogram that stands.</param>
/// <param name="BecauseOf">Only where the present pictogram stands for a class with this beginning; null for any.</param>
/// <param name="GivesWay">The pictogram that gives way.</param>
/// <param name="ForHazards">Only hazards with these beginnings give way; empty for all.</param>
/// <param name="Optional">True where it may, and need not, be left out.</param>
/// <param name="Rules">The rule sets that have this rule.</param>
/// <param name="Provenance">Its clause.</param>
public sealed record PictogramRule(
    string Present,
    string? BecauseOf,
    string GivesWay,
    IReadOnlyList<string> ForHazards,
    bool Optional,
    IReadOnlyList<RuleSet> Rules,
    Provenance Provenance);

/// <summary>Precedence of pictograms (CLP Art. 26) and of statements (Art. 27), from their tables.</summary>
public sealed class PrecedenceRules
{
    private static readonly Dictionary<string, bool> Effects = new(StringComparer.Ordinal) { ["optional"] = true, ["dropped"] = false };

    private PrecedenceRules(Table pictograms, Table statements)
    {
        Pictograms = [.. pictograms.Rows.Select(r => new PictogramRule(
            r.Text("present"), r.TextOrNull("because_of"), r.Text("gives_way"), r.List("for_hazards"), r.OneOf("effect", Effects), RuleSets.Read(r, "rules"), r.Provenance))];
        Statements = [.. statements.Rows.Select(r => (r.Text("present"), r.Text("left_out"), RuleSets.Read(r, "rules")))];
    }

    public IReadOnlyList<PictogramRule> Pictograms { get; }

    public IReadOnlyList<(string Present, string LeftOut, IReadOnlyList<RuleSet> Rules)> Statements { get; }

    internal static PrecedenceRules Read() => new(
        EmbeddedTables.Facts("pictogram-precedence.tsv", "present", "because_of", "gives_way", "for_hazards", "effect", "rules"),
        EmbeddedTables.Facts("statement-precedence.tsv", "present", "left_out", "rules"));
}
