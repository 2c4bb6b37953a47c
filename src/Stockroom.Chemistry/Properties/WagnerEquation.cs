using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Wagner equation: ln(p/Pc) = (Tc/T)(A t + B t^1.5 + C t^m + D t^n) with t = 1 - T/Tc; m, n are 2.5, 5 or 3, 6. Holds up to Tc.
/// Source: VDI Heat Atlas, 2nd ed., D3 (2.5, 5); McGarry, Ind. Eng. Chem. Process Des. Dev. 22 (1983) 313 (3, 6).
/// Worked example: chlorine, -6.43911, 1.48278, -1.21184, -2.02926, Tc 416.96 K, Pc 7.991 MPa, 2.5 and 5: 778 kPa at 298.15 K.
/// </summary>
public static class WagnerEquation
{
    public static Pressure With25And5(FitCoefficients k, Temperature critical, Pressure criticalPressure, Temperature t) =>
        Evaluate(k, critical, criticalPressure, t, 2.5, 5);

    public static Pressure With3And6(FitCoefficients k, Temperature critical, Pressure criticalPressure, Temperature t) =>
        Evaluate(k, critical, criticalPressure, t, 3, 6);

    private static Pressure Evaluate(FitCoefficients k, Temperature critical, Pressure criticalPressure, Temperature t, double m, double n)
    {
        var tau = Math.Max(0, 1 - (t.Kelvin / critical.Kelvin));
        var sum = (k.A * tau) + (k.B * Math.Pow(tau, 1.5)) + (k.C * Math.Pow(tau, m)) + (k.D * Math.Pow(tau, n));
        return new Pressure(criticalPressure.Pascals * Math.Exp(critical.Kelvin / t.Kelvin * sum));
    }
}
