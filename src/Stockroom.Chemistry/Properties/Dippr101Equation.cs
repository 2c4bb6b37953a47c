using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// DIPPR equation 101: ln p = A + B/T + C ln T + D T^E; p in Pa, T in K, from the triple to the critical point.
/// Source: Perry's Chemical Engineers' Handbook, 8th ed., Table 2-8.
/// Worked example: water, 73.649, -7258.2, -7.3037, 4.1653e-6, 2: 3.17 kPa at 298.15 K.
/// </summary>
public static class Dippr101Equation
{
    public static Pressure Pressure(FitCoefficients k, Temperature t) =>
        new(Math.Exp(k.A + (k.B / t.Kelvin) + (k.C * Math.Log(t.Kelvin)) + (k.D * Math.Pow(t.Kelvin, k.E))));
}
