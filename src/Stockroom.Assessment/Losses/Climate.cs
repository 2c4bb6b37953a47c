using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// A place's year as two sinusoids, a slow one over the seasons and a quick one over the day. A mean over both is taken analytically at the
/// nodes of Gauss and Chebyshev: exact for a rate that bends with temperature up to the third power (two nodes) or the fifth (three).
/// Source: Abramowitz and Stegun, 25.4.38.
/// </summary>
internal static class Climate
{
    // Up to a half-swing of 6 K two nodes are right to a thousandth even for a rate that trebles in 10 K.
    private const double TwoNodesUpTo = 6;

    /// <summary>A mean over the day and a temperature of that day; all weigh the same.</summary>
    internal readonly record struct Moment(Temperature DayMean, Temperature At);

    public static bool IsSteady(Situation situation) => situation.DailySwing.Kelvins <= 0 && situation.SeasonalSwing.Kelvins <= 0;

    public static List<Moment> Moments(Situation situation)
    {
        var moments = new List<Moment>(9);
        foreach (var season in Offsets(situation.SeasonalSwing.Kelvins / 2))
        {
            var mean = new Temperature(situation.Temperature.Kelvin + season);
            foreach (var hour in Offsets(situation.DailySwing.Kelvins / 2))
                moments.Add(new Moment(mean, new Temperature(mean.Kelvin + hour)));
        }

        return moments;
    }

    /// <summary>The coldest that a content gets: as said of the place, else by its mean and swings.</summary>
    public static Temperature Coldest(Situation s) => Extreme(s.Coldest, s, -1);

    /// <summary>The warmest that a content gets: as said of the place, else by its mean and swings.</summary>
    public static Temperature Warmest(Situation s) => Extreme(s.Warmest, s, 1);

    internal static double[] Offsets(double half)
    {
        if (half <= 0)
            return [0];
        return half <= TwoNodesUpTo
            ? [-half * Math.Sqrt(0.5), half * Math.Sqrt(0.5)]
            : [-half * Math.Sqrt(0.75), 0, half * Math.Sqrt(0.75)];
    }

    private static Temperature Extreme(Temperature? said, Situation s, int sign)
    {
        var usual = s.Temperature.Kelvin + (sign * (s.SeasonalSwing.Kelvins + s.DailySwing.Kelvins) / 2);
        return new Temperature(said is { } t ? (sign > 0 ? Math.Max(t.Kelvin, usual) : Math.Min(t.Kelvin, usual)) : usual);
    }
}
