using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Losses.Ingress;

/// <summary>What a substance takes from the air, by stoichiometry.</summary>
/// <remarks>Moles: of the gas for one mole of the substance. SpoilsAt: share of that at which it counts as spoiled.</remarks>
internal sealed record AirUptake(string Substance, string Gas, Fraction Moles, Fraction SpoilsAt, string Makes, Provenance Provenance)
{
    private static readonly Lazy<ILookup<string, AirUptake>> Rows = new(() => EmbeddedTables.Facts("air-uptake.tsv", "substance", "gas", "moles", "spoils_at_percent", "makes").Rows
        .Select(r => new AirUptake(r.Text("substance"), r.Text("gas"), new Fraction(r.Positive("moles")), Fraction.FromPercent(r.Positive("spoils_at_percent")), r.Text("makes"), r.Provenance))
        .ToLookup(u => u.Substance, StringComparer.Ordinal));

    public static AirUptake? Of(Substance substance, string gas) => Rows.Value[substance.Name].FirstOrDefault(u => u.Gas == gas);
}

/// <summary>How fast a gas of the air passes a liquid cover.</summary>
/// <remarks>Ratio: concentration in the liquid over that in the gas (Ostwald).</remarks>
internal sealed record CoverGas(string Cover, string Gas, Fraction Ratio, Diffusivity Diffusivity, Spread Spread, Provenance Provenance)
{
    private static readonly Lazy<IReadOnlyDictionary<(string, string), CoverGas>> Rows = new(() => EmbeddedTables.Facts("cover-gases.tsv", "cover", "gas", "ratio", "m2_s", "spread").Rows
        .Select(r => new CoverGas(r.Text("cover"), r.Text("gas"), new Fraction(r.Positive("ratio")), new Diffusivity(r.Positive("m2_s")), Spread.Of(r.Positive("spread")), r.Provenance))
        .ToDictionary(c => (c.Cover, c.Gas)));

    public static CoverGas? Of(string cover, string gas) => Rows.Value.GetValueOrDefault((cover, gas));
}
