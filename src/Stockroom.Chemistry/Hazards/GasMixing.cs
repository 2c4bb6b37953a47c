using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>
/// Whether a mixture of gases burns or feeds fire, by the calculation of ISO 10156 (UN GHS 2.2.5 and 2.4.4), from
/// gas-mixing.tsv. Shares are per cent by volume. Null where a figure is missing.
/// </summary>
public sealed class GasMixing
{
    /// <summary>Oxidising power in per cent from which a mixture is an oxidising gas (UN GHS 2.4.4).</summary>
    public const decimal OxidisingFrom = 23.5m;

    private readonly Dictionary<string, (decimal? Burns, decimal? Inert, decimal? Oxidises, Provenance Source)> _gases;

    private GasMixing(Table table) => _gases = table.Rows.ToDictionary(
        r => r.Text("substance"),
        r => (r.DecimalOrNull("flammable_from_percent"), r.DecimalOrNull("nitrogen_equivalent"), r.DecimalOrNull("oxygen_equivalent"), r.Provenance),
        StringComparer.Ordinal);

    internal static GasMixing Read() =>
        new(EmbeddedTables.Facts("gas-mixing.tsv", "substance", "flammable_from_percent", "nitrogen_equivalent", "oxygen_equivalent"));

    /// <summary>Source of the figures for one gas.</summary>
    public Provenance SourceOf(string gas) => _gases[gas].Source;

    /// <summary>Sum of share/limit of the flammable gases once the others are turned into nitrogen: above 1 the mixture burns.</summary>
    public decimal? FlammableSum(IReadOnlyList<(string Gas, decimal Percent)> gases)
    {
        if (!gases.All(g => _gases.TryGetValue(g.Gas, out var f) && (f.Burns is not null || f.Inert is not null)))
            return null;
        var whole = gases.Sum(g => g.Percent * (_gases[g.Gas].Burns is not null ? 1m : _gases[g.Gas].Inert!.Value));
        return gases.Where(g => _gases[g.Gas].Burns is not null).Sum(g => g.Percent * 100m / whole / _gases[g.Gas].Burns!.Value);
    }

    /// <summary>Oxidising power of the whole in per cent of oxygen.</summary>
    public decimal? OxidisingPower(IReadOnlyList<(string Gas, decimal Percent)> gases)
    {
        if (!gases.All(g => _gases.TryGetValue(g.Gas, out var f) && (f.Oxidises is not null || f.Inert is not null)))
            return null;
        var whole = gases.Sum(g => g.Percent * (_gases[g.Gas].Oxidises is not null ? 1m : _gases[g.Gas].Inert!.Value));
        return gases.Where(g => _gases[g.Gas].Oxidises is not null).Sum(g => g.Percent * _gases[g.Gas].Oxidises!.Value) * 100m / whole;
    }
}
