using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>How long an element lasts: its stable isotopes, or the longest-lived one.</summary>
/// <param name="Element">Symbol.</param>
/// <param name="Stable">Isotopes that were never seen to decay; empty where there is none.</param>
/// <param name="LongestLived">The longest-lived isotope, where none is stable.</param>
/// <param name="HalfLife">Its half-life in s.</param>
/// <param name="Spread">Uncertainty of the half-life; wide for elements of which a few atoms were made.</param>
/// <param name="Provenance">Who says so.</param>
public sealed record ElementIsotopes(string Element, IReadOnlyList<string> Stable, string? LongestLived, Span? HalfLife, Spread Spread, Provenance Provenance)
{
    private static readonly Lazy<Dictionary<string, ElementIsotopes>> Table = new(Read);

    public bool IsStable => Stable.Count > 0;

    /// <summary>By the element's symbol; null for what is no element.</summary>
    public static ElementIsotopes? Of(string symbol) => Table.Value.GetValueOrDefault(symbol);

    private static Dictionary<string, ElementIsotopes> Read()
    {
        var rows = EmbeddedTables.Facts("longest-lived-isotopes.tsv", "element", "stable", "longest_lived", "half_life_s", "spread_percent").Rows;
        foreach (var row in rows)
        {
            if (row.List("stable").Count > 0 == row.TextOrNull("longest_lived") is not null)
                throw row.Wrong("longest_lived", "is stated where no isotope is stable, and only there");
        }

        return rows.ToDictionary(r => r.Text("element"), One, StringComparer.Ordinal);
    }

    private static ElementIsotopes One(TableRow row) => row.TextOrNull("longest_lived") is { } nuclide
        ? new(row.Text("element"), [], nuclide, new Span(row.Positive("half_life_s")), Spread.OfPercent(row.Number("spread_percent")), row.Provenance)
        : new(row.Text("element"), row.List("stable"), null, null, Spread.OfPercent(0), row.Provenance);
}
