using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Decay of stabilised hydrogen peroxide in a clean vessel, first order, the rate times a fixed factor for each 10 K.
/// Dirt and metals make it up to 1000 times faster. Half a mole of oxygen leaves for each mole.
/// Source: monographs of peroxide makers (from memory; constants in decomposition.tsv). Within a factor of 5.
/// Worked example: 3.2e-10 1/s at 25 degrees C is 1 % a year; 2.2 % a year at 35 degrees C.
/// </summary>
public static class PeroxideDecay
{
    public static RateConstant RateConstant(FitCoefficients k, Temperature reference, Temperature t) =>
        new(k.A * Math.Pow(k.B, (t.Kelvin - reference.Kelvin) / 10));

    /// <summary>Volumes of oxygen at 0 degrees C and one atmosphere that one volume of solution gives.</summary>
    public static Fraction VolumeStrength(MassConcentration peroxide) =>
        new(peroxide.KilogramsPerCubicMetre / 0.0340147 / 2 * 0.02241397);
}
