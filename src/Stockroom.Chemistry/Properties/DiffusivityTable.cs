using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Diffusion coefficient of a vapour in air at one atmosphere: the nearest measured value times (T/T0)^1.75, else the Fuller
/// method, else a plain range of vapours of that kind.
/// </summary>
internal sealed class DiffusivityTable
{
    // Vapours of 60 to 300 g/mol measured at room temperature lie between about 5e-6 and 1.2e-5 m2/s (diffusivity-in-air.tsv).
    private const double UsualVapour = 7.7e-6;

    private static readonly Provenance Fuller =
        new("Fuller, Schettler, Giddings method with the volumes of Poling, Prausnitz, O'Connell, 5th ed. (from memory)", "Table 11-1", "2001");

    private static readonly Provenance Usual = new("estimate: range of measured vapours of 60 to 300 g/mol", "diffusivity-in-air.tsv", "2026");

    private readonly Dictionary<string, List<(Temperature At, Diffusivity D, Spread Spread, Provenance Provenance)>> _measured = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> _elements = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> _molecules = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> _rings = new(StringComparer.Ordinal);
    private double _ring;

    private DiffusivityTable()
    {
    }

    public static DiffusivityTable Read(SubstanceCatalogue catalogue)
    {
        var table = new DiffusivityTable();
        foreach (var row in EmbeddedTables.Facts("diffusivity-in-air.tsv", "substance", "at_k", "m2_s", "spread_percent").Rows)
        {
            var name = row.SubstanceOf(catalogue, "substance").Name;
            if (!table._measured.TryGetValue(name, out var list))
                table._measured[name] = list = [];
            list.Add((new Temperature(row.Positive("at_k")), new Diffusivity(row.Positive("m2_s")), Spread.OfPercent(row.Positive("spread_percent")), row.Provenance));
        }

        foreach (var row in EmbeddedTables.Facts("fuller-volumes.tsv", "species", "kind", "volume").Rows)
            table.AddVolume(row, catalogue);
        return table;
    }

    public Fact<Diffusivity> InAir(Substance substance, Temperature t)
    {
        if (_measured.TryGetValue(substance.Name, out var list))
        {
            var (at, d, spread, provenance) = list.MinBy(m => Math.Abs(m.At.Kelvin - t.Kelvin));
            return Fact<Diffusivity>.Of(d * Math.Pow(t.Kelvin / at.Kelvin, 1.75), spread, provenance);
        }

        if (substance.MolarMass is not { } molarMass)
            return Fact<Diffusivity>.Of(new Diffusivity(UsualVapour * Math.Pow(t.Kelvin / 298.15, 1.75)), Spread.Of(1.7), Usual, "a mixture; taken as a usual vapour");
        return VolumeOf(substance) is { } volume
            ? Fact<Diffusivity>.Of(FullerMethod.InAir(t, molarMass, volume), Spread.OfPercent(10), Fuller)
            : Fact<Diffusivity>.Of(
                new Diffusivity(UsualVapour * Math.Pow(t.Kelvin / 298.15, 1.75)), Spread.Of(1.6), Usual, $"no diffusion volume is published for an element of {substance.Name}; taken as a usual vapour");
    }

    /// <summary>Null where an element has no published volume.</summary>
    public DiffusionVolume? VolumeOf(Substance substance)
    {
        if (substance.Formula is not { } formula)
            return null;
        if (_molecules.TryGetValue(formula.Text, out var whole))
            return new DiffusionVolume(whole);
        var sum = _ring * _rings.GetValueOrDefault(substance.Name);
        foreach (var (symbol, count) in formula.Atoms)
        {
            if (!_elements.TryGetValue(symbol, out var volume))
                return null;
            sum += volume * count;
        }

        return sum > 0 ? new DiffusionVolume(sum) : null;
    }

    private void AddVolume(TableRow row, SubstanceCatalogue catalogue)
    {
        var value = row.Number("volume");
        switch (row.Text("kind"))
        {
            case "element":
                _elements[row.Text("species")] = value;
                break;
            case "molecule":
                _molecules[row.Text("species")] = value;
                break;
            case "correction":
                _ring = value;
                break;
            case "rings":
                _rings[row.SubstanceOf(catalogue, "species").Name] = value;
                break;
            default:
                throw row.Wrong("kind", $"'{row.Text("kind")}' must be element, molecule, correction or rings");
        }
    }
}
