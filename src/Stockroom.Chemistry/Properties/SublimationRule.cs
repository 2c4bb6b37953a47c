using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// At or below the sublimation point: the entropy of sublimation is that of vaporisation by Trouton's rule, 88 J/(mol K), and of fusion, 30 in the
/// middle of Walden's rule, so ln(p/101325 Pa) = -14.2 (Ts/T - 1). Uncertain by half the exponent: molecules that join or part as they leave
/// the solid reach twice the entropy.
/// Source: Atkins, Physical Chemistry, 10th ed., section 3B.
/// Worked example: uranium hexafluoride, Ts 329.65 K: about 17 kPa at 20 degrees C (measured 11).
/// </summary>
public static class SublimationRule
{
    private const double EntropyOverGasConstant = (88.0 + 30.0) / PhysicalConstants.GasConstant;

    public static Pressure Pressure(Temperature sublimes, Temperature t) => PhysicalConstants.StandardAtmosphere * Math.Exp(-Exponent(sublimes, t));

    public static Spread Spread(Temperature sublimes, Temperature t) => Quantities.Spread.Of(Math.Exp(Math.Abs(0.5 * Exponent(sublimes, t))));

    private static double Exponent(Temperature sublimes, Temperature t) => EntropyOverGasConstant * ((sublimes.Kelvin / t.Kelvin) - 1);
}
