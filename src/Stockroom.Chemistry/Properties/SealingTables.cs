using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>How much room a substance needs as it freezes.</summary>
/// <remarks>Growth: of the volume, at the melting point.</remarks>
public sealed record FreezingGrowth(Substance Substance, Fraction Growth, Provenance Provenance);

/// <summary>A listed filling ratio of a liquefied gas and the test pressure that a metal receptacle needs for it.</summary>
/// <remarks>Ratio: mass of gas over the receptacle's volume.</remarks>
public sealed record ListedFillingRatio(Substance Substance, Density Ratio, Pressure TestPressure, string UnNumber, Provenance Provenance);

/// <summary>Reads freezing-growth.tsv and filling-ratios.tsv: what matters when a vessel is closed for good.</summary>
internal sealed class SealingTables
{
    private readonly Dictionary<string, FreezingGrowth> _growths = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<ListedFillingRatio>> _ratios = new(StringComparer.Ordinal);

    private SealingTables()
    {
    }

    public static SealingTables Read(SubstanceCatalogue catalogue)
    {
        var tables = new SealingTables();
        foreach (var row in EmbeddedTables.Facts("freezing-growth.tsv", "substance", "swells_percent").Rows)
        {
            var growth = new FreezingGrowth(row.SubstanceOf(catalogue, "substance"), Fraction.FromPercent(row.Positive("swells_percent")), row.Provenance);
            if (!tables._growths.TryAdd(growth.Substance.Name, growth))
                throw row.Wrong("substance", "stands twice");
        }

        foreach (var row in EmbeddedTables.Facts("filling-ratios.tsv", "substance", "kg_per_litre", "test_bar", "un").Rows)
        {
            var ratio = new ListedFillingRatio(
                row.SubstanceOf(catalogue, "substance"), Density.FromGramsPerMillilitre(row.Positive("kg_per_litre")), Pressure.FromBar(row.Positive("test_bar")), row.Text("un"), row.Provenance);
            if (!tables._ratios.TryGetValue(ratio.Substance.Name, out var list))
                tables._ratios[ratio.Substance.Name] = list = [];
            list.Add(ratio);
        }

        return tables;
    }

    public FreezingGrowth? Growth(Substance substance) => _growths.GetValueOrDefault(substance.Name);

    public IReadOnlyList<ListedFillingRatio> Ratios(Substance substance) => _ratios.TryGetValue(substance.Name, out var list) ? list : [];
}
