using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Density of a substance as liquid, solid or gas: a liquid by its fit, else its handbook density moved by its expansion;
/// a solid by its handbook density; a gas by the ideal gas law at one atmosphere.
/// </summary>
internal sealed class Densities(LiquidDensityTable table, PropertyTable properties)
{
    private static readonly Provenance IdealGas = new("ideal gas law", "at 101.325 kPa", "-");

    public Fact<Density> Liquid(Substance substance, Temperature t)
    {
        var melting = properties.Find(substance, PropertyKind.MeltingPoint)?.Value;
        if (melting is { } m && t.Kelvin < m - 1)
            return Fact<Density>.Missing($"{substance.Name} is solid below {m - 273.15:0.#} degrees C; its liquid density is not stated there");
        if (table.Find(substance) is not { } fit)
            return ByExpansion(substance, t);
        if (t >= fit.To)
            return Fact<Density>.Missing($"{substance.Name} is no liquid at {t.Celsius:0} degrees C: its fit ends at {fit.To.Celsius:0} degrees C");
        return fit.From is { } from && t.Kelvin < from.Kelvin - 1
            ? Fact<Density>.Of(fit.At(substance, t), fit.Spread.And(Spread.OfPercent(1)), fit.Provenance, "just below the range of its fit")
            : Fact<Density>.Of(fit.At(substance, t), fit.Spread, fit.Provenance);
    }

    /// <summary>Never a reading above the melting point: that is the liquid's, and ice is lighter, most other solids heavier.</summary>
    public Fact<Density> Solid(Substance substance, FreezingGrowth? growth)
    {
        if (properties.Find(substance, PropertyKind.Density) is not { } entry)
            return Fact<Density>.Missing($"no density of {substance.Name} is in the tables");
        if (!IsOfTheLiquid(substance, entry, out var melting))
            return Fact<Density>.Of(new Density(entry.Value), entry.Spread, entry.Provenance);
        var molten = Liquid(substance, new Temperature(melting));
        return growth is { } swells && molten.Value is { } liquid
            ? Fact<Density>.Of(liquid * (1 / (1 + swells.Growth.Value)), molten.Spread.And(Spread.OfPercent(1)), swells.Provenance, "its liquid at the melting point, less what it swells by")
            : Fact<Density>.Missing($"no density of solid {substance.Name} is in the tables, only of its liquid");
    }

    public static Fact<Density> Gas(Substance substance, Temperature t) =>
        substance.MolarMass is { } molarMass
            ? Fact<Density>.Of(new Density(GasLaw.Concentration(PhysicalConstants.StandardAtmosphere, molarMass, t).KilogramsPerCubicMetre), Spread.OfPercent(2), IdealGas)
            : Fact<Density>.Missing($"the molar mass of {substance.Name} is not known");

    private Fact<Density> ByExpansion(Substance substance, Temperature t)
    {
        if (properties.Find(substance, PropertyKind.Density) is not { } known || (substance.State != MatterState.Liquid && !IsOfTheLiquid(substance, known, out _)))
            return Fact<Density>.Missing($"no liquid density of {substance.Name} is in the tables");
        var at = known.At ?? Temperature.FromCelsius(20);
        if (properties.Find(substance, PropertyKind.Expansion) is { } expansion)
        {
            var density = known.Value / (1 + (expansion.Value * (t.Kelvin - at.Kelvin)));
            var widened = known.Spread.And(Spread.OfPercent(100 * expansion.Value * 0.2 * Math.Abs(t.Kelvin - at.Kelvin)));
            return Fact<Density>.Of(new Density(density), widened, known.Provenance, "handbook density moved by its expansion");
        }

        return Fact<Density>.Of(
            new Density(known.Value),
            known.Spread.And(Spread.OfPercent(0.15 * Math.Abs(t.Kelvin - at.Kelvin))),
            known.Provenance,
            $"stated at {at.Celsius:0} degrees C; no expansion is in the tables");
    }

    private bool IsOfTheLiquid(Substance substance, PropertyTable.Entry reading, out double melting)
    {
        melting = properties.Find(substance, PropertyKind.MeltingPoint)?.Value ?? double.PositiveInfinity;
        return substance.State != MatterState.Gas && (reading.At ?? Temperature.FromCelsius(20)).Kelvin > melting + 1;
    }
}
