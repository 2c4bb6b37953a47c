using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Possession;

/// <summary>One public rule that names a substance: a fact to look up, never advice.</summary>
/// <param name="Substance">The part of the content that the rule names.</param>
/// <param name="Rule">The law, by its short title.</param>
/// <param name="Kind">restricted, reportable, precursor, controlled, chemical weapon schedule or banned.</param>
/// <param name="Percent">The content's share of the substance, per cent by mass.</param>
/// <param name="LimitPercent">The strength from which the rule speaks, where it gives one.</param>
/// <param name="UpperPercent">The highest strength a licence may allow, where it gives one.</param>
/// <param name="Note">What else the rule says of it.</param>
/// <param name="Provenance">The law's place and the date it was good for.</param>
public sealed record PossessionFact(
    Substance Substance, string Rule, string Kind, decimal Percent, decimal? LimitPercent, decimal? UpperPercent, string? Note, Provenance Provenance)
{
    /// <summary>True where the content is stronger than the limit; null where the rule gives no strength.</summary>
    public bool? IsAboveLimit => LimitPercent is { } limit ? Percent > limit : null;
}

/// <summary>Reads possession.tsv: public rules on who may hold what.</summary>
public static class PossessionFacts
{
    private static readonly string[] Kinds = ["restricted", "reportable", "precursor", "controlled", "chemical weapon schedule", "banned"];

    private static readonly Lazy<ILookup<string, TableRow>> Rows = new(Read);

    /// <summary>The rules that name a part of the content, at whatever strength; empty for an orphan, of which nothing can be said.</summary>
    public static IReadOnlyList<PossessionFact> Of(Content content) =>
        [.. content.Parts.SelectMany(p => Rows.Value[p.Substance.Name].Select(r => Fact(p.Substance, p.Percent, r)))];

    private static PossessionFact Fact(Substance substance, decimal percent, TableRow row) => new(
        substance, row.Text("rule"), row.Text("kind"), percent, row.DecimalOrNull("limit_percent"), row.DecimalOrNull("upper_percent"), row.TextOrNull("note"), row.Provenance);

    private static ILookup<string, TableRow> Read()
    {
        var table = EmbeddedTables.Facts("possession.tsv", "substance", "rule", "kind", "limit_percent", "upper_percent", "note");
        foreach (var row in table.Rows)
        {
            if (SubstanceCatalogue.Default.Find(row.Text("substance")) is null)
                throw row.Wrong("substance", $"'{row.Text("substance")}' is not a substance of substances.tsv");
            if (!Kinds.Contains(row.Text("kind")))
                throw row.Wrong("kind", $"'{row.Text("kind")}' must be one of {string.Join(", ", Kinds)}");
            _ = Fact(SubstanceCatalogue.Default[row.Text("substance")], 0m, row);
        }

        return table.Rows.ToLookup(r => r.Text("substance"), StringComparer.Ordinal);
    }
}
