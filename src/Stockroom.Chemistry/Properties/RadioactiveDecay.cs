using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Radioactive decay: N = N0 e^(-lambda t), lambda = ln 2 / half-life, A = lambda N, N = m Na / M.
/// Source: Arnikar and Rajurkar, Nuclear Chemistry through Problems, chapter 4.
/// Worked example: 1 mCi (37 MBq) of radium-226 is 1.01 mg (example 4.3).
/// </summary>
public static class RadioactiveDecay
{
    public static RateConstant DecayConstant(Span halfLife) => new(Math.Log(2) / halfLife.Seconds);

    public static SpecificActivity SpecificActivity(Span halfLife, MolarMass molarMass) =>
        new(DecayConstant(halfLife).PerSecond * PhysicalConstants.Avogadro / molarMass.KilogramsPerMole);

    public static Mass MassOf(Activity activity, Span halfLife, MolarMass molarMass) =>
        new(activity.Becquerels / SpecificActivity(halfLife, molarMass).BecquerelsPerKilogram);

    public static Fraction Remaining(Span halfLife, Span elapsed) => new(Math.Exp(-DecayConstant(halfLife).PerSecond * elapsed.Seconds));

    /// <summary>Helium made by alpha particles at a steady activity.</summary>
    public static AmountOfSubstance Helium(Activity activity, Fraction alphasPerDecay, Span elapsed) =>
        new(activity.Becquerels * alphasPerDecay.Value * elapsed.Seconds / PhysicalConstants.Avogadro);
}
