using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Density of the saturated liquid by the three published forms in use; T in K, from the melting to the critical point.
/// DIPPR 105: mol/m3 = A / B^(1 + (1 - T/C)^D) (Perry's Chemical Engineers' Handbook, 8th ed., Table 2-32, there in mol/dm3).
/// PPDS 116: kg/m3 = A + B t^0.35 + C t^(2/3) + D t + E t^(4/3), t = 1 - T/Tc (VDI Heat Atlas, 2nd ed., D3).
/// Linear: kg/m3 = A - B (T - C) (CRC Handbook, density of molten elements and salts).
/// Worked example: bromine, DIPPR 105, 2187.2, 0.29527, 584.15, 0.3295: 3121 kg/m3 at 293.15 K.
/// </summary>
public static class LiquidDensityEquations
{
    public static Density Dippr105(FitCoefficients k, MolarMass molarMass, Temperature t)
    {
        var molesPerCubicMetre = k.A / Math.Pow(k.B, 1 + Math.Pow(Math.Max(0, 1 - (t.Kelvin / k.C)), k.D));
        return new Density(molesPerCubicMetre * molarMass.KilogramsPerMole);
    }

    public static Density Ppds116(FitCoefficients k, Temperature critical, Temperature t)
    {
        var tau = Math.Max(0, 1 - (t.Kelvin / critical.Kelvin));
        return new Density(k.A + (k.B * Math.Pow(tau, 0.35)) + (k.C * Math.Pow(tau, 2.0 / 3)) + (k.D * tau) + (k.E * Math.Pow(tau, 4.0 / 3)));
    }

    public static Density Linear(FitCoefficients k, Temperature t) => new(k.A - (k.B * (t.Kelvin - k.C)));
}
