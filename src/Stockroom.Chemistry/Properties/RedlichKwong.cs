using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Pressure of a real gas: p = R T/(V - b) - a/(sqrt(T) V (V + b)), a = 0.42748 R^2 Tc^2.5/pc, b = 0.08664 R Tc/pc, V the molar volume.
/// Within some 5 per cent for a gas or a fluid above its critical temperature, less sure near the critical point.
/// Source: Redlich and Kwong, Chem. Rev. 44 (1949) 233; Smith, Van Ness, Abbott, section 3.5.
/// Worked example: n-butane (425.1 K, 37.96 bar) at 350 K and 2555 cm3/mol: 9.457 bar (Smith, Van Ness, Abbott, example 3.9).
/// </summary>
public static class RedlichKwong
{
    public static Pressure Pressure(AmountOfSubstance n, Volume v, Temperature t, Temperature critical, Pressure criticalPressure)
    {
        const double R = PhysicalConstants.GasConstant;
        var volume = v.CubicMetres / n.Moles;
        var a = 0.42748 * R * R * Math.Pow(critical.Kelvin, 2.5) / criticalPressure.Pascals;
        var b = 0.08664 * R * critical.Kelvin / criticalPressure.Pascals;
        return volume <= b
            ? throw new ArgumentOutOfRangeException(nameof(v), v, "Less room than the molecules themselves take up.")
            : new Pressure((R * t.Kelvin / (volume - b)) - (a / (Math.Sqrt(t.Kelvin) * volume * (volume + b))));
    }

    /// <summary>The least volume the equation has a pressure for.</summary>
    public static Volume LeastVolume(AmountOfSubstance n, Temperature critical, Pressure criticalPressure) =>
        new(n.Moles * 0.08664 * PhysicalConstants.GasConstant * critical.Kelvin / criticalPressure.Pascals);

    /// <summary>
    /// p V/(n R T) of the vapour at a pressure: the largest root of Z^3 - Z^2 + (A - B - B^2) Z - A B = 0, A = a p/(R^2 T^2.5), B = b p/(R T); never
    /// below the 1/3 that the equation has at its critical point.
    /// </summary>
    public static Fraction VapourCompressibility(Pressure p, Temperature t, Temperature critical, Pressure criticalPressure)
    {
        var (reduced, over) = (p / criticalPressure, critical.Kelvin / t.Kelvin);
        var a = 0.42748 * reduced * Math.Pow(over, 2.5);
        var b = 0.08664 * reduced * over;
        var z = 1.0;
        for (var i = 0; i < 60 && z > 1.0 / 3; i++)
            z -= ((((z - 1) * z) + (a - b - (b * b))) * z - (a * b)) / ((((3 * z) - 2) * z) + (a - b - (b * b)));
        return new(Math.Max(z, 1.0 / 3));
    }

    /// <summary>p V/(n R T); 1 for an ideal gas.</summary>
    public static Fraction Compressibility(Pressure p, AmountOfSubstance n, Volume v, Temperature t) =>
        new(p.Pascals * v.CubicMetres / (n.Moles * PhysicalConstants.GasConstant * t.Kelvin));
}
