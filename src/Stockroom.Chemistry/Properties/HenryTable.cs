using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>Reads henry.tsv: solubility of gases and vapours in water.</summary>
internal sealed class HenryTable
{
    private readonly Dictionary<string, (HenryConstant H, TemperatureChange Slope, Spread Spread, Provenance Provenance)> _rows = new(StringComparer.Ordinal);

    private HenryTable()
    {
    }

    public static HenryTable Read(SubstanceCatalogue catalogue)
    {
        var table = new HenryTable();
        foreach (var row in EmbeddedTables.Facts("henry.tsv", "substance", "mol_m3_pa", "slope_k", "spread_percent").Rows)
        {
            var entry = (new HenryConstant(row.Positive("mol_m3_pa")), new TemperatureChange(row.Positive("slope_k")), Spread.OfPercent(row.Positive("spread_percent")), row.Provenance);
            if (!table._rows.TryAdd(row.SubstanceOf(catalogue, "substance").Name, entry))
                throw row.Wrong("substance", "stands twice");
        }

        return table;
    }

    public Fact<HenryConstant> At(Substance substance, Temperature t) =>
        _rows.TryGetValue(substance.Name, out var e)
            ? Fact<HenryConstant>.Of(HenryLaw.At(e.H, e.Slope, t), e.Spread, e.Provenance)
            : Fact<HenryConstant>.Missing($"no Henry constant of {substance.Name} is in the tables");
}
