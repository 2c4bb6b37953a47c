using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Ideal gas law: c = p M/(R T) and its inverses; the share in air is p/P. Within 2 % of a real vapour up to some 2 bar.
/// Source: Atkins, Physical Chemistry, 10th ed., section 1A.
/// Worked example: mercury at 20 degrees C, 0.17 Pa: 14 mg/m3.
/// </summary>
public static class GasLaw
{
    public static MassConcentration Concentration(Pressure p, MolarMass molarMass, Temperature t) =>
        new(p.Pascals * molarMass.KilogramsPerMole / (PhysicalConstants.GasConstant * t.Kelvin));

    public static Pressure PartialPressure(MassConcentration c, MolarMass molarMass, Temperature t) =>
        new(c.KilogramsPerCubicMetre * PhysicalConstants.GasConstant * t.Kelvin / molarMass.KilogramsPerMole);

    public static Pressure Pressure(AmountOfSubstance n, Volume v, Temperature t) =>
        new(n.Moles * PhysicalConstants.GasConstant * t.Kelvin / v.CubicMetres);

    /// <summary>Share by volume of a vapour in air of a total pressure.</summary>
    public static Fraction Share(Pressure p, Pressure total) => new(p / total);

    /// <summary>mg/m3 of a share by volume at 25 degrees C and one atmosphere, as limit lists convert it (24.45 L/mol).</summary>
    public static MassConcentration AtReference(Fraction share, MolarMass molarMass) =>
        Concentration(PhysicalConstants.StandardAtmosphere * share.Value, molarMass, PhysicalConstants.Reference);
}
