using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// The vapour pressure of a substance at a temperature, by the preferred fit of its phase. Below the melting point the solid's
/// fit, or the liquid's value at the melting point carried down by Clausius-Clapeyron with an estimated heat of fusion; never the
/// liquid's fit itself. At and above the critical temperature there is none. Without a fit, Lee and Kesler's law
/// where the critical point is known, else Grain's method from the boiling point, or Trouton's rule from the sublimation point.
/// </summary>
internal sealed class SaturationPressure(VapourPressureTable table, PropertyTable properties)
{
    // Entropy of fusion between about 5 (metals) and 55 J/(mol K) (rigid molecules, Walden); the middle with its reach as spread.
    private const double FusionEntropy = 30;

    /// <summary>Kelvins above the boiling point up to which the heat of vaporisation there is good enough; what is sealed gets so warm.</summary>
    private const double AboveBoiling = 60;

    private static readonly Provenance Walden = new("Walden's rule for the entropy of fusion", "estimate", "1908");
    private static readonly Provenance Reduced = new("Lee and Kesler, AIChE J. 21, 510", "estimate from the boiling and critical points", "1975");
    private static readonly Provenance Trouton = new("Trouton's rule from the sublimation point", "estimate", "1884");
    private static readonly Provenance Grain = new("Grain's method from the boiling point, in Lyman, Handbook of Chemical Property Estimation Methods", "estimate", "1982");

    public Fact<Pressure> Of(Substance substance, Temperature t)
    {
        var liquid = table.Find(substance, MatterState.Liquid);
        var solid = table.Find(substance, MatterState.Solid);
        var melting = properties.Find(substance, PropertyKind.MeltingPoint)?.Value;
        if (Critical(substance, liquid) is { } critical && t.Kelvin >= critical)
            return Fact<Pressure>.Missing($"{substance.Name} is above its critical temperature of {critical - 273.15:0} degrees C: a gas under any pressure, without a vapour pressure");
        if (melting is { } m && t.Kelvin < m - 0.05)
            return BelowMelting(substance, t, new Temperature(m), liquid, solid);
        return (liquid ?? solid)?.At(t) ?? Estimate(substance, t);
    }

    private Fact<Pressure> BelowMelting(Substance substance, Temperature t, Temperature melting, VapourPressureFit? liquid, VapourPressureFit? solid)
    {
        if (solid is not null)
            return solid.At(t);
        if (liquid is null)
            return Estimate(substance, t);
        var atMelting = liquid.At(melting);
        var sublimation = new MolarEnergy(liquid.EnthalpyAt(liquid.From > melting ? liquid.From : melting).JoulesPerMole + (FusionEntropy * melting.Kelvin));
        var p = ClausiusClapeyron.Extrapolate(atMelting.Value!.Value, melting, sublimation, t);
        var reach = Spread.Of(Math.Exp(25 / PhysicalConstants.GasConstant * ((melting.Kelvin / t.Kelvin) - 1)));
        var beyond = Spread.Of(Math.Pow(1.1, (melting.Kelvin - t.Kelvin) / 10));
        return Fact<Pressure>.Of(
            p,
            atMelting.Spread.And(reach).And(beyond),
            liquid.Provenance,
            $"solid below {melting.Celsius:0} degrees C; the liquid's value there carried down by Clausius-Clapeyron with an estimated heat of fusion ({Walden.Source})");
    }

    private Fact<Pressure> Estimate(Substance substance, Temperature t)
    {
        if (ByCriticalPoint(substance, t) is { } reduced)
            return reduced;
        if (properties.Find(substance, PropertyKind.BoilingPoint)?.Value is { } boils)
            return ByBoilingPoint(substance, new Temperature(boils), t);
        if (properties.Find(substance, PropertyKind.SublimationPoint)?.Value is not { } sublimes)
            return Fact<Pressure>.Missing($"no vapour pressure and no boiling point of {substance.Name} is in the tables");
        var point = new Temperature(sublimes);
        return t.Kelvin > sublimes + 5
            ? Fact<Pressure>.Missing($"{substance.Name} sublimes at {point.Celsius:0} degrees C and no fit of its vapour pressure is in the tables")
            : Fact<Pressure>.Of(SublimationRule.Pressure(point, t), SublimationRule.Spread(point, t), Trouton, "estimated by Trouton's rule from the sublimation point");
    }

    private Fact<Pressure> ByBoilingPoint(Substance substance, Temperature boiling, Temperature t)
    {
        if (t.Kelvin > boiling.Kelvin + AboveBoiling)
            return Fact<Pressure>.Missing($"{substance.Name} boils at {boiling.Celsius:0} degrees C and no fit of its vapour pressure is in the tables");
        var solid = properties.Find(substance, PropertyKind.MeltingPoint)?.Value is { } melting ? t.Kelvin < melting : substance.State == MatterState.Solid;
        var p = GrainMethod.Pressure(boiling, t, solid);
        return Fact<Pressure>.Of(p, GrainMethod.Spread(p, solid || MayBond(substance)), Grain, "estimated from the boiling point");
    }

    private static bool MayBond(Substance substance) =>
        substance.Formula is not { } formula || (formula.Contains("H") && (formula.Contains("O") || formula.Contains("N") || formula.Contains("F")));

    // Critical data of solids are extrapolations, of metals most of all.
    private Fact<Pressure>? ByCriticalPoint(Substance substance, Temperature t)
    {
        if (substance.State == MatterState.Solid
            || properties.Find(substance, PropertyKind.BoilingPoint)?.Value is not { } boiling
            || properties.Find(substance, PropertyKind.CriticalTemperature)?.Value is not { } critical
            || properties.Find(substance, PropertyKind.CriticalPressure)?.Value is not { } pressure
            || !LeeKesler.Holds(new Temperature(boiling), new Temperature(critical)))
            return null;
        var p = LeeKesler.Pressure(new Temperature(boiling), new Temperature(critical), new Pressure(pressure), t);
        return Fact<Pressure>.Of(p, LeeKesler.Spread(p), Reduced, "estimated from the boiling and critical points");
    }

    private double? Critical(Substance substance, VapourPressureFit? liquid) =>
        liquid?.Critical?.Kelvin ?? properties.Find(substance, PropertyKind.CriticalTemperature)?.Value;
}
