using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Trouton's rule: the entropy of vaporisation at the boiling point is about 88 J/(mol K), so ln(p/101325 Pa) = -10.6 (Tb/T - 1).
/// For contents of which only the boiling point is known. Uncertain by a fifth of the exponent; hydrogen-bonded liquids lie lower.
/// Source: Atkins, Physical Chemistry, 10th ed., section 3B.
/// Worked example: carbon tetrachloride, Tb 349.9 K: about 16 kPa at 298.15 K (measured 15).
/// </summary>
public static class TroutonRule
{
    private const double EntropyOverGasConstant = 88.0 / PhysicalConstants.GasConstant;

    private const double FusionToo = 118.0 / 88;

    /// <summary>Estimate at or below the boiling point.</summary>
    public static Pressure Pressure(Temperature boiling, Temperature t) =>
        PhysicalConstants.StandardAtmosphere * Math.Exp(-Exponent(boiling, t));

    /// <summary>
    /// At or below the sublimation point: the entropy of sublimation is that of vaporisation and of fusion, 118 J/(mol K) with Walden's rule in its middle.
    /// Uncertain by half the exponent: molecules that join or part as they leave the solid reach twice the entropy.
    /// </summary>
    public static Pressure Sublimation(Temperature sublimes, Temperature t) => PhysicalConstants.StandardAtmosphere * Math.Exp(-Exponent(sublimes, t) * FusionToo);

    public static Spread SublimationSpread(Temperature sublimes, Temperature t) =>
        Quantities.Spread.Of(Math.Exp(Math.Abs(0.5 * FusionToo * Exponent(sublimes, t))));

    public static Spread Spread(Temperature boiling, Temperature t) =>
        Quantities.Spread.Of(Math.Exp(Math.Abs(0.2 * Exponent(boiling, t))));

    private static double Exponent(Temperature boiling, Temperature t) => EntropyOverGasConstant * ((boiling.Kelvin / t.Kelvin) - 1);
}
