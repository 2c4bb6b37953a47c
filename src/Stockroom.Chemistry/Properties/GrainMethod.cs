using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Vapour pressure from the boiling point alone, the entropy of vaporisation by Kistiakowsky and its heat growing as it cools:
/// ln(p/atm) = (8.75 + R ln Tb)/(0.97 R) (1 - (3 - 2 x)^m/x - 2 m (3 - 2 x)^(m-1) ln x), x = T/Tb, R in cal/(mol K); m = 0.19 for a liquid, for a solid
/// 0.36 where x is above 0.6, 0.8 down to 0.5 and 1.19 below. Hydrogen-bonded liquids lie lower, diols up to ten times.
/// Source: Grain in Lyman, Reehl, Rosenblatt, Handbook of Chemical Property Estimation Methods (1982), chapter 14 (from memory).
/// Worked example: p-xylene, Tb 411.5 K: 0.89 kPa at 20 degrees C (measured 0.87).
/// </summary>
public static class GrainMethod
{
    private const double Calories = PhysicalConstants.GasConstant / 4.184;

    public static Pressure Pressure(Temperature boiling, Temperature t, bool solid) =>
        PhysicalConstants.StandardAtmosphere * Math.Exp(Exponent(boiling, t, solid));

    /// <summary>An eighth of the exponent; a third for what may be hydrogen-bonded, and for a solid.</summary>
    public static Spread Spread(Pressure p, bool wide) =>
        Quantities.Spread.Of(Math.Exp((wide ? 1.0 / 3 : 0.125) * Math.Abs(Math.Log(Math.Max(p.Pascals, double.Epsilon) / PhysicalConstants.StandardAtmosphere.Pascals)))).And(Quantities.Spread.OfPercent(3));

    private static double Exponent(Temperature boiling, Temperature t, bool solid)
    {
        var x = t.Kelvin / boiling.Kelvin;
        var m = !solid ? 0.19 : x > 0.6 ? 0.36 : x > 0.5 ? 0.8 : 1.19;
        var bent = 3 - (2 * x);
        return (8.75 + (Calories * Math.Log(boiling.Kelvin))) / (0.97 * Calories) * (1 - (Math.Pow(bent, m) / x) - (2 * m * Math.Pow(bent, m - 1) * Math.Log(x)));
    }
}
