using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>How a wall material passes one substance at room temperature, with the band of the value and its activation energy.</summary>
/// <remarks>Gas: Per unit partial pressure; null where the value is for contact. Contact: At full activity, liquid or saturated vapour; null where the value is for a gas.</remarks>
public sealed record WallPermeability(
    string Material, Substance Substance, Band<Permeability>? Gas, Band<LiquidPermeation>? Contact, Temperature At, MolarEnergy Activation, Provenance Provenance);

/// <summary>Reads permeability.tsv.</summary>
internal sealed class PermeabilityTable
{
    private readonly Dictionary<(string, string), List<WallPermeability>> _rows = [];

    private PermeabilityTable()
    {
    }

    public static PermeabilityTable Read(SubstanceCatalogue catalogue)
    {
        var table = new PermeabilityTable();
        foreach (var row in EmbeddedTables.Facts(
            "permeability.tsv", "material", "substance", "kind", "unit", "low", "value", "high", "spread", "at_k", "activation_kj").Rows)
        {
            var entry = ReadRow(row, catalogue);
            var key = (entry.Material, entry.Substance.Name);
            if (!table._rows.TryGetValue(key, out var list))
                table._rows[key] = list = [];
            list.Add(entry);
        }

        return table;
    }

    public IReadOnlyList<WallPermeability> Find(string material, Substance substance) =>
        _rows.TryGetValue((material, substance.Name), out var list) ? list : [];

    private static WallPermeability ReadRow(TableRow row, SubstanceCatalogue catalogue)
    {
        var value = row.Positive("value");
        var spread = row.Positive("spread");
        var band = new Band<double>(row.PositiveOrNull("low") ?? (value / spread), value, row.PositiveOrNull("high") ?? (value * spread));
        if (band.Low > value || band.High < value)
            throw row.Wrong("value", "must lie between low and high");
        var gas = row.Text("kind") switch
        {
            "gas" => true,
            "contact" => false,
            var other => throw row.Wrong("kind", $"'{other}' must be gas or contact"),
        };
        if (row.Text("unit") != (gas ? "barrer" : "g mm/m2 day"))
            throw row.Wrong("unit", $"'{row.Text("unit")}' must be {(gas ? "barrer" : "g mm/m2 day")}");
        return new WallPermeability(
            row.Text("material"),
            row.SubstanceOf(catalogue, "substance"),
            gas ? band.Select(Permeability.FromBarrer) : null,
            gas ? null : band.Select(LiquidPermeation.FromGramMillimetrePerSquareMetreDay),
            new Temperature(row.Positive("at_k")),
            MolarEnergy.FromKilojoulesPerMole(row.Positive("activation_kj")),
            row.Provenance);
    }
}
