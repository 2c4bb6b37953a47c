using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// A place's year as two sinusoids, a slow one over the seasons and a quick one over the day. A mean over both is taken analytically: by
/// the three temperatures and weights of Gauss that belong to the sum of the two, exact for a rate that bends with temperature up to the
/// fifth power. Source: Golub, Welsch, Math. Comp. 23 (1969) 221, for the moments of a sum of two arcsine laws.
/// </summary>
internal static class Climate
{
    /// <summary>A temperature, the mean of the day to which it belongs, and its weight.</summary>
    internal readonly record struct Moment(Temperature DayMean, Temperature At, double Weight);

    // A swing of less than a hundredth of a kelvin is none.
    private const double Least = 0.01;

    public static bool IsSteady(Situation situation) => situation.DailySwing.Kelvins < Least && situation.SeasonalSwing.Kelvins < Least;

    /// <summary>Three moments, coolest first.</summary>
    public static Moment[] Moments(Situation situation)
    {
        var (season, day) = (situation.SeasonalSwing.Kelvins / 2, situation.DailySwing.Kelvins / 2);
        var (a2, b2) = (season * season, day * day);

        // Second and fourth moment of a cos + b cos, the two angles even and independent.
        var second = (a2 + b2) / 2;
        var fourth = (3.0 / 8 * ((a2 * a2) + (b2 * b2))) + (6.0 / 4 * a2 * b2);
        var (offset, weight) = (Math.Sqrt(fourth / second), second * second / (2 * fourth));
        var seasonal = Math.Sqrt(a2 / (4 * weight));
        Moment At(int sign, double share) =>
            new(new Temperature(situation.Temperature.Kelvin + (sign * seasonal)), new Temperature(situation.Temperature.Kelvin + (sign * offset)), share);
        return [At(-1, weight), At(0, 1 - (2 * weight)), At(1, weight)];
    }

    /// <summary>The coldest that a content gets: as said of the place, else by its mean and swings.</summary>
    public static Temperature Coldest(Situation s) => Extreme(s.Coldest, s, -1);

    /// <summary>The warmest that a content gets: as said of the place, else by its mean and swings.</summary>
    public static Temperature Warmest(Situation s) => Extreme(s.Warmest, s, 1);

    private static Temperature Extreme(Temperature? said, Situation s, int sign)
    {
        var usual = s.Temperature.Kelvin + (sign * (s.SeasonalSwing.Kelvins + s.DailySwing.Kelvins) / 2);
        return new Temperature(said is { } t ? (sign > 0 ? Math.Max(t.Kelvin, usual) : Math.Min(t.Kelvin, usual)) : usual);
    }
}
