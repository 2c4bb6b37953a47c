using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Air of a closed space that takes up a steady emission G: C(t) = C0 e^(-kQt/V) + G/(kQ) (1 - e^(-kQt/V)), Q the fresh air, k how well
/// it mixes (0.1 to 1). A cabinet in a room is two such boxes in series: what leaves the one enters the other.
/// Source: AIHA, Mathematical Models for Estimating Occupational Exposure to Chemicals. Uncertain threefold for want of Q and k.
/// Worked example: 10 mg/h into 50 m3/h, well mixed: 0.2 mg/m3.
/// </summary>
public static class WellMixedAir
{
    public static MassConcentration Steady(MassRate emission, VolumeRate fresh, Fraction mixing) =>
        new(emission.KilogramsPerSecond / (mixing.Value * fresh.CubicMetresPerSecond));

    public static MassConcentration After(MassConcentration start, MassRate emission, VolumeRate fresh, Fraction mixing, Volume space, Span elapsed)
    {
        var left = Math.Exp(-mixing.Value * fresh.CubicMetresPerSecond * elapsed.Seconds / space.CubicMetres);
        return (start * left) + (Steady(emission, fresh, mixing) * (1 - left));
    }

    /// <summary>In the inner of two boxes, whose fresh air is the air of the outer.</summary>
    public static MassConcentration SteadyWithin(MassConcentration outer, MassRate emission, VolumeRate fresh, Fraction mixing) =>
        outer + Steady(emission, fresh, mixing);

    /// <summary>
    /// Concentration of a vapour by volume from its emission: ppm = 1e6 Q R T/(k Qv P M).
    /// Source: Crowl and Louvar, Chemical Process Safety, section 3-3. Worked example: toluene, 0.162 lb/min into 3000 ft3/min: 230 ppm.
    /// </summary>
    public static Fraction ShareByVolume(MassRate emission, MolarMass molarMass, VolumeRate fresh, Fraction mixing, Temperature t, Pressure total) =>
        new(GasLaw.PartialPressure(Steady(emission, fresh, mixing), molarMass, t) / total);

    /// <summary>The eight-hour mean of what was breathed: the sum of share times hours over eight.</summary>
    /// <remarks>Source: 29 CFR 1910.1000(d)(1). Worked example: 2 h of 150, 2 h of 75 and 4 h of 50 ppm: 81.25 ppm.</remarks>
    public static Fraction EightHourMean(IEnumerable<(Span Time, Fraction Share)> breathed) =>
        new(breathed.Sum(b => b.Time.Seconds * b.Share.Value) / (8 * 3600));

    /// <summary>Of several substances at once the sum of concentration over limit; up to 1 is within the limits.</summary>
    /// <remarks>Source: 29 CFR 1910.1000(d)(2)(i). Worked example: 500 of 1000, 45 of 200 and 40 of 200 ppm: 0.925.</remarks>
    public static Fraction SumOfShares(IEnumerable<(Fraction Share, Fraction Limit)> together) =>
        new(together.Sum(t => t.Share / t.Limit));
}
