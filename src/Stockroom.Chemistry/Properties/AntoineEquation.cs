using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Antoine equation: ln p = A - B/(T + C), or the same with the decimal logarithm; p in Pa, T in K.
/// Holds within the range of each fit, usually between 1 and 200 kPa.
/// Source: Poling, Prausnitz, O'Connell, The Properties of Gases and Liquids, 5th ed., eq. 7-3.1 and Appendix A.
/// Worked example: bromine, log10 form 9.0027, 1119.68, -51.77: 28.72 kPa at 298.15 K.
/// </summary>
public static class AntoineEquation
{
    public static Pressure NaturalLogarithm(FitCoefficients k, Temperature t) => new(Math.Exp(k.A - (k.B / (t.Kelvin + k.C))));

    public static Pressure DecimalLogarithm(FitCoefficients k, Temperature t) => new(Math.Pow(10, k.A - (k.B / (t.Kelvin + k.C))));
}
