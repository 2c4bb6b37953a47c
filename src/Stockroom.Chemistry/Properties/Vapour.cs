using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// What stands over a content: the part that gives it off, the gas it leaves as (hydrogen chloride from hydrochloric acid),
/// and its partial pressure at saturation.
/// </summary>
public sealed record Vapour(Substance Part, Substance Gas, Fact<Pressure> Pressure);

/// <summary>
/// Partial pressures over a content: a pure substance by its vapour pressure; a solution in water by the listed partial pressures,
/// else by Henry's law where dilute, else by Raoult's law. A dissolved solid without a vapour pressure counts as staying.
/// </summary>
public static class Vapours
{
    private static readonly Spread WaterByRaoult = Spread.Of(1.3);

    public static IReadOnlyList<Vapour> Over(Content content, Temperature t, PropertyFacts facts)
    {
        if (content.Pure is { } pure)
        {
            var gas = GasOf(pure, facts);
            return [new Vapour(pure, gas, facts.VapourPressure(gas, t))];
        }

        var moles = 0.0;
        foreach (var part in content.Parts)
            moles += Moles(part);
        var list = new List<Vapour>(content.Parts.Count);
        foreach (var part in content.Parts)
        {
            var gas = GasOf(part.Substance, facts);
            var pressure = Partial(content, part, gas, moles, t, facts);
            if (pressure.IsKnown || part.Substance.State != MatterState.Solid)
                list.Add(new Vapour(part.Substance, gas, pressure));
        }

        return list;
    }

    private static Substance GasOf(Substance substance, PropertyFacts facts) =>
        substance.DissolvedFormOf is { } gas ? facts.Catalogue[gas] : substance;

    private static Fact<Pressure> Partial(Content content, Part part, Substance gas, double moles, Temperature t, PropertyFacts facts)
    {
        var strength = Fraction.FromPercent((double)part.Percent);
        if (part.Substance.Name == "water")
            return Water(content, moles, t, facts);
        if (content.WaterPercent > 0 && facts.SolutionPressure(part.Substance, gas, strength, t) is { } listed)
            return listed;
        var pure = facts.VapourPressure(gas, t);
        if (content.WaterPercent > 50 && ByHenry(content, part, gas, pure, t, facts) is { } dilute)
            return dilute;
        return pure.Value is { } p
            ? Fact<Pressure>.Of(
                RaoultLaw.Partial(new Fraction(Moles(part) / moles), p), pure.Spread.And(RaoultLaw.NonIdeal), pure.Provenance!, "ideal mixture assumed (Raoult)")
            : pure;
    }

    private static Fact<Pressure>? ByHenry(Content content, Part part, Substance gas, Fact<Pressure> pure, Temperature t, PropertyFacts facts)
    {
        var henry = facts.Henry(gas, t);
        if (henry.Value is not { } h || part.Substance.MolarMass is not { } molarMass)
            return null;
        var density = content.Density?.KilogramsPerCubicMetre ?? 1000;
        var concentration = new MolarConcentration(density * (double)part.Percent / 100 / molarMass.KilogramsPerMole);
        var p = HenryLaw.Pressure(concentration, h);
        if (pure.Value is { } limit && p > limit)
            p = limit;
        return Fact<Pressure>.Of(p, henry.Spread, henry.Provenance!, "dilute solution (Henry)");
    }

    private static Fact<Pressure> Water(Content content, double moles, Temperature t, PropertyFacts facts)
    {
        var water = facts.Catalogue["water"];
        foreach (var other in content.Parts)
        {
            if (facts.SolutionPressure(other.Substance, water, Fraction.FromPercent((double)other.Percent), t) is { } listed)
                return listed;
        }

        var pure = facts.VapourPressure(water, t);
        if (pure.Value is not { } p)
            return pure;
        if (content.PercentOf("sulfuric acid") >= 60)
            return Fact<Pressure>.Of(p * 0.05, Spread.Of(3), pure.Provenance!, "strong sulfuric acid holds its water and takes up more from the air");
        var share = (double)content.WaterPercent / 18.015 / moles;
        return Fact<Pressure>.Of(RaoultLaw.Partial(new Fraction(share), p), WaterByRaoult, pure.Provenance!, "ideal solution assumed (Raoult)");
    }

    // Moles in 100 g; a dissolved solid counts twice, as most are salts of two ions, and an unknown molar mass as 200 g/mol.
    private static double Moles(Part part)
    {
        var molarMass = part.Substance.MolarMass?.GramsPerMole ?? 200;
        return (double)part.Percent / molarMass * (part.Substance.State == MatterState.Solid ? 2 : 1);
    }
}
