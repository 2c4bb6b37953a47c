using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Henry's law: c = H p, with H(T) = H(298.15 K) exp(s (1/T - 1/298.15)). Dilute solutions of gases that do not react with water.
/// Source: Sander, Atmos. Chem. Phys. 15 (2015) 4399. Uncertain by about 30 %.
/// Worked example: bromine water saturated at 34.1 g/L under 28.6 kPa: 0.0075 mol/(m3 Pa) (published 0.0072).
/// </summary>
public static class HenryLaw
{
    public static HenryConstant At(HenryConstant reference, TemperatureChange slope, Temperature t) =>
        reference * Math.Exp(slope.Kelvins * ((1 / t.Kelvin) - (1 / PhysicalConstants.Reference.Kelvin)));

    public static Pressure Pressure(MolarConcentration c, HenryConstant h) => new(c.MolesPerCubicMetre / h.MolesPerCubicMetrePascal);

    public static MolarConcentration Dissolved(Pressure p, HenryConstant h) => new(p.Pascals * h.MolesPerCubicMetrePascal);

    /// <summary>Mole fraction dissolved under a gas by a constant stated as pressure over mole fraction.</summary>
    /// <remarks>Worked example: air at 90.04 kPa over water, 6200 MPa: 1.452e-5 (Cengel 14.3).</remarks>
    public static Fraction MoleFraction(Pressure gas, Pressure constant) => new(gas / constant);

    /// <summary>The constant of a gas whose saturated solution and pressure are known.</summary>
    public static HenryConstant From(MolarConcentration saturated, Pressure p) => new(saturated.MolesPerCubicMetre / p.Pascals);
}
