using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Evaporation from a pool or an open surface, by four published forms. They differ by a factor of two or more; none is trusted
/// indoors to better than that. A pool of a very volatile liquid cools as it goes and then loses less.
/// </summary>
public static class PoolEvaporation
{
    private const double PoundPerMinuteToKilogramPerSecond = 0.45359237 / 60;

    /// <summary>
    /// Mass transfer coefficient k = 0.0048 U^(7/9) d^(-1/9) Sc^(-2/3) in m/s, wind in m/s, pool diameter in m.
    /// Source: Kawamura and Mackay, J. Hazard. Mater. 15 (1987) 343. Worked example: 0.3 m/s over 0.5 m, Sc 1.8: 1.37e-3 m/s.
    /// </summary>
    public static Speed ByWind(Speed wind, Length diameter, Fraction schmidt) =>
        new(0.0048 * Math.Pow(wind.MetresPerSecond, 7.0 / 9) * Math.Pow(diameter.Metres, -1.0 / 9) * Math.Pow(schmidt.Value, -2.0 / 3));

    /// <summary>Flux of a vapour by a mass transfer coefficient.</summary>
    public static MassFlux Flux(Speed coefficient, Pressure vapour, MolarMass molarMass, Temperature t) =>
        new(coefficient.MetresPerSecond * GasLaw.Concentration(vapour, molarMass, t).KilogramsPerCubicMetre);

    /// <summary>
    /// Coefficient in a still to mild draught from that of water: K = K0 (M0/M)^(1/3), K0 0.83 cm/s.
    /// Source: Crowl and Louvar, Chemical Process Safety, section 3-3. Worked example: toluene, 92 g/mol: 0.948 ft/min.
    /// </summary>
    public static Speed StillDraught(MolarMass molarMass) =>
        new(0.0083 * Math.Cbrt(MolarMass.FromGramsPerMole(18) / molarMass));

    /// <summary>
    /// Liquid factor of the off-site screening: 0.284 M^(2/3) p/(82.05 T) in lb/(min ft2), p in mmHg, at the lowest wind of 1.5 m/s
    /// (a factor 1.4 for it stands in the rate). Source: US EPA, Risk Management Program, Offsite Consequence Analysis, appendix D.
    /// Worked example: acrylonitrile 0.018.
    /// </summary>
    public static Fraction LiquidFactor(MolarMass molarMass, Pressure vapour, Temperature t) =>
        new(0.284 * Math.Pow(molarMass.GramsPerMole, 2.0 / 3) * vapour.MillimetresMercury / (82.05 * t.Kelvin));

    /// <summary>
    /// Rate of an undiked spill of one centimetre depth: QS 1.4 LFA DF, in lb and lb/min, DF the density factor 1/(0.033 rho) in lb/ft3.
    /// Source: US EPA, Offsite Consequence Analysis, equation 3-3. Worked example: 20,000 lb of acrylonitrile: 307 lb/min.
    /// </summary>
    public static MassRate Undiked(Mass spilled, Fraction liquidFactor, Fraction densityFactor, Fraction windFactor) =>
        new(spilled.Kilograms / 0.45359237 * liquidFactor.Value * densityFactor.Value * windFactor.Value * PoundPerMinuteToKilogramPerSecond);

    /// <summary>
    /// Open surface in a draught of up to 0.5 m/s: G = 8.24e-8 M^0.835 F p (1/29 + 1/M)^0.25 v^0.5 A/(T^0.05 L^0.5 P^0.5), in g/s, p in mmHg,
    /// v in ft/min, A in cm2, L in cm, P in atm. Source: US EPA Chemical Engineering Branch manual, 1991 (from memory). Worked example: toluene over 0.1 m2: 0.0594 g/s.
    /// </summary>
    public static MassRate OpenSurface(MolarMass molarMass, Pressure vapour, Speed draught, Area surface, Temperature t, Length along, Pressure total)
    {
        var m = molarMass.GramsPerMole;
        var feetPerMinute = draught.MetresPerSecond * 60 / 0.3048;
        var grams = 8.24e-8 * Math.Pow(m, 0.835) * vapour.MillimetresMercury * Math.Pow((1.0 / 29) + (1 / m), 0.25) * Math.Sqrt(feetPerMinute) * surface.SquareCentimetres
            / (Math.Pow(t.Kelvin, 0.05) * Math.Sqrt(along.Metres * 100) * Math.Sqrt(total / PhysicalConstants.StandardAtmosphere));
        return new MassRate(grams / 1000);
    }
}
