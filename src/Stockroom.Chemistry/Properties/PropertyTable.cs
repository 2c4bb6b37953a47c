using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>Reads properties.tsv: single values of substances.</summary>
internal sealed class PropertyTable
{
    private static readonly Dictionary<string, (PropertyKind Kind, string Unit)> Kinds = new(StringComparer.Ordinal)
    {
        ["melting_point"] = (PropertyKind.MeltingPoint, "K"),
        ["boiling_point"] = (PropertyKind.BoilingPoint, "K"),
        ["sublimation_point"] = (PropertyKind.SublimationPoint, "K"),
        ["density"] = (PropertyKind.Density, "kg/m3"),
        ["gas_density"] = (PropertyKind.GasDensity, "kg/m3"),
        ["expansion"] = (PropertyKind.Expansion, "1/K"),
        ["flash_point"] = (PropertyKind.FlashPoint, "K"),
        ["lower_flammable_limit"] = (PropertyKind.LowerFlammableLimit, "1"),
        ["upper_flammable_limit"] = (PropertyKind.UpperFlammableLimit, "1"),
        ["critical_temperature"] = (PropertyKind.CriticalTemperature, "K"),
        ["critical_pressure"] = (PropertyKind.CriticalPressure, "Pa"),
        ["vapour_molar_mass"] = (PropertyKind.VapourMolarMass, "kg/mol"),
    };

    private readonly Dictionary<(string, PropertyKind), Entry> _entries = [];
    private readonly Dictionary<string, List<PropertyReading>> _readings = new(StringComparer.Ordinal);

    private PropertyTable()
    {
    }

    internal readonly record struct Entry(double Value, Temperature? At, Spread Spread, Provenance Provenance);

    public static PropertyTable Read(SubstanceCatalogue catalogue)
    {
        var table = new PropertyTable();
        foreach (var row in EmbeddedTables.Facts("properties.tsv", "substance", "property", "value", "unit", "at_k", "spread_percent", "preferred").Rows)
        {
            var substance = row.SubstanceOf(catalogue, "substance");
            var (kind, unit) = row.OneOf("property", Kinds);
            if (row.Text("unit") != unit)
                throw row.Wrong("unit", $"'{row.Text("unit")}' must be {unit} for {row.Text("property")}");
            var entry = new Entry(
                row.Positive("value"),
                row.PositiveOrNull("at_k") is { } at ? new Temperature(at) : null,
                Spread.OfPercent(row.Number("spread_percent")),
                row.Provenance);
            var preferred = row.YesNo("preferred");
            if (preferred && !table._entries.TryAdd((substance.Name, kind), entry))
                throw row.Wrong("preferred", $"{substance.Name} has two preferred values of {row.Text("property")}; one must be no");
            if (!preferred && !table._entries.ContainsKey((substance.Name, kind)))
                throw row.Wrong("preferred", $"{substance.Name} has no preferred {row.Text("property")} before this one");
            table.Keep(substance, Reading(row, kind, entry, preferred));
        }

        return table;
    }

    /// <summary>Every reading of a substance, preferred and not, in the order of the table.</summary>
    public IReadOnlyList<PropertyReading> Readings(Substance substance) => _readings.GetValueOrDefault(substance.Name) ?? [];

    public Entry? Find(Substance substance, PropertyKind kind) =>
        _entries.TryGetValue((substance.Name, kind), out var entry) ? entry : null;

    private static PropertyReading Reading(TableRow row, PropertyKind kind, Entry entry, bool preferred) => new(
        kind,
        row.Text("property").Replace('_', ' '),
        row.Text("value"),
        row.Text("unit"),
        row.Text("unit") == "K" ? new Temperature(entry.Value) : null,
        row.Text("unit") == "kg/m3" ? new Density(entry.Value) : null,
        entry.At,
        entry.Spread,
        preferred,
        entry.Provenance);

    private void Keep(Substance substance, PropertyReading reading)
    {
        if (!_readings.TryGetValue(substance.Name, out var list))
            _readings[substance.Name] = list = [];
        list.Add(reading);
    }
}
