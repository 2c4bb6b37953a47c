using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Vapour pressure of a fluid from its boiling and critical points: ln(p/pc) = f0(T/Tc) + w f1(T/Tc), the acentric factor w such that
/// the boiling point is met. A few per cent from there to the critical point, less sure below and for acids and alcohols.
/// Source: Lee, Kesler, AIChE J. 21 (1975) 510; Poling, Prausnitz, O'Connell, 5th ed., section 7-4.
/// Worked example: ethylbenzene (409.36 K; 617.15 K, 36.09 bar) at 347.25 K: 13.0 kPa (measured 13.3), at 460 K: 333 kPa, as measured.
/// </summary>
public static class LeeKesler
{
    /// <summary>Boiling points lie between these shares of the critical temperature (Guldberg's rule); what lies elsewhere, metals and helium, does not follow the law.</summary>
    private const double LeastBoiling = 0.5;
    private const double MostBoiling = 0.8;

    public static bool Holds(Temperature boiling, Temperature critical) => boiling.Kelvin / critical.Kelvin is > LeastBoiling and < MostBoiling;

    public static Pressure Pressure(Temperature boiling, Temperature critical, Pressure criticalPressure, Temperature t)
    {
        var at = boiling.Kelvin / critical.Kelvin;
        var acentric = (Math.Log(PhysicalConstants.StandardAtmosphere.Pascals / criticalPressure.Pascals) - Simple(at)) / Correction(at);
        var reduced = t.Kelvin / critical.Kelvin;
        return criticalPressure * Math.Exp(Simple(reduced) + (acentric * Correction(reduced)));
    }

    /// <summary>5 per cent near the boiling point and above, and 7 per cent of the exponent below.</summary>
    public static Spread Spread(Pressure p) =>
        Quantities.Spread.OfPercent(5).And(Quantities.Spread.Of(Math.Exp(0.07 * Math.Max(0, Math.Log(PhysicalConstants.StandardAtmosphere.Pascals / p.Pascals)))));

    private static double Simple(double tr) => 5.92714 - (6.09648 / tr) - (1.28862 * Math.Log(tr)) + (0.169347 * Math.Pow(tr, 6));

    private static double Correction(double tr) => 15.2518 - (15.6875 / tr) - (13.4721 * Math.Log(tr)) + (0.43577 * Math.Pow(tr, 6));
}
