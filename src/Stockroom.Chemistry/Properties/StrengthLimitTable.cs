using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>The least strength of a preparation's deciding part, as a share by mass.</summary>
public sealed record StrengthLimit(Substance Substance, Fraction Least, Provenance Provenance);

/// <summary>Reads strength-limits.tsv.</summary>
internal sealed class StrengthLimitTable
{
    private readonly Dictionary<string, StrengthLimit> _rows = new(StringComparer.Ordinal);

    private StrengthLimitTable()
    {
    }

    public static StrengthLimitTable Read(SubstanceCatalogue catalogue)
    {
        var table = new StrengthLimitTable();
        foreach (var row in EmbeddedTables.Facts("strength-limits.tsv", "preparation", "substance", "percent").Rows)
        {
            if (catalogue.Resolve(row.Text("preparation")).Content is not { } content || content.Name != row.Text("preparation"))
                throw row.Wrong("preparation", "is not the name of a preparation");
            var limit = new StrengthLimit(row.SubstanceOf(catalogue, "substance"), Fraction.FromPercent(row.Positive("percent")), row.Provenance);
            if ((double)content.PercentOf(limit.Substance.Name) <= limit.Least.Percent)
                throw row.Wrong("percent", "is no less than the preparation has");
            if (!table._rows.TryAdd(content.Name, limit))
                throw row.Wrong("preparation", "stands twice");
        }

        return table;
    }

    public StrengthLimit? Find(string preparation) => _rows.GetValueOrDefault(preparation);
}
