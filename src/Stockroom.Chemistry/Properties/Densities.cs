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

    public Fact<Density> Solid(Substance substance) =>
        properties.Find(substance, PropertyKind.Density) is { } entry
            ? Fact<Density>.Of(new Density(entry.Value), entry.Spread, entry.Provenance)
            : Fact<Density>.Missing($"no density of {substance.Name} is in the tables");

    public static Fact<Density> Gas(Substance substance, Temperature t) =>
        substance.MolarMass is { } molarMass
            ? Fact<Density>.Of(new Density(GasLaw.Concentration(PhysicalConstants.StandardAtmosphere, molarMass, t).KilogramsPerCubicMetre), Spread.OfPercent(2), IdealGas)
            : Fact<Density>.Missing($"the molar mass of {substance.Name} is not known");

    private Fact<Density> ByExpansion(Substance substance, Temperature t)
    {
        if (substance.State != MatterState.Liquid || properties.Find(substance, PropertyKind.Density) is not { } known)
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
}
