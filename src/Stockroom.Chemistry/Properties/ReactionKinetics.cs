using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// First order c = c0 e^(-k t), second order 1/c = 1/c0 + k t, Arrhenius k2 = k1 exp((Ea/R)(1/T1 - 1/T2)).
/// Source: Chang, Chemistry, chapter 13. Worked examples: 13.4a (0.25 mol/L, k 6.7e-4 1/s, 528 s: 0.18 mol/L);
/// 13.7a (0.086 mol/L, 7e9 L/(mol s), 120 s: 1.2e-12 mol/L); 13.9 (3.46e-2 1/s at 298 K, 50.2 kJ/mol: 0.702 at 350 K).
/// </summary>
public static class ReactionKinetics
{
    public static MolarConcentration FirstOrder(MolarConcentration start, RateConstant k, Span elapsed) =>
        start * Math.Exp(-k.PerSecond * elapsed.Seconds);

    public static Span FirstOrderTime(RateConstant k, Fraction remaining) => new(-Math.Log(remaining.Value) / k.PerSecond);

    public static MolarConcentration SecondOrder(MolarConcentration start, SecondOrderRateConstant k, Span elapsed) =>
        new(1 / ((1 / start.MolesPerCubicMetre) + (k.CubicMetresPerMoleSecond * elapsed.Seconds)));

    public static RateConstant Arrhenius(RateConstant known, Temperature at, MolarEnergy activation, Temperature to) =>
        known * Math.Exp(activation.JoulesPerMole / PhysicalConstants.GasConstant * ((1 / at.Kelvin) - (1 / to.Kelvin)));
}
