using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses.WeighIns;

/// <summary>
/// How far the loss of an interval strays from the course of a year, as shares of that loss: by seasons that are not what the book makes of
/// them, which comes back every year and cancels over one, and by spells of weather, which average out over an interval.
/// </summary>
/// <param name="Seasonal">One standard deviation of the share at the height of the season, for the cosine and the sine of the year alike.</param>
/// <param name="Spells">One standard deviation of the share in a short interval.</param>
/// <param name="NextYear">One standard deviation of the share by which a year's mean differs from another's.</param>
internal readonly record struct SeasonStray(double Seasonal, double Spells, double NextYear)
{
    // A stated swing is right to a quarter, its dates to three weeks, and no summer is like the last; where nobody said, a room may swing by
    // some 15 K between its coolest and warmest month. From memory: rooms and stores of temperate climates.
    private const double OfStated = 0.3;
    private const double OneSummer = 1;
    private const double Unstated = 4;

    // Warm and cold spells of weeks indoors, and what handling and a lid put on differently do.
    private const double SpellKelvins = 1.5;
    private const double SpellSeconds = 20 * 86400.0;
    private const double Handling = 0.03;
    private const double OneYear = 0.7;

    // Heat of evaporation of 40 kJ/mol near room temperature, where the physics does not tell.
    private const double UsualSlope = 0.055;
    private const double Apart = 3;

    private const double Turn = 2 * Math.PI / Span.SecondsPerYear;

    public static SeasonStray Of(Situation situation, PropertyFacts facts)
    {
        var slope = Slope(situation, facts);
        var half = situation.SeasonalSwing.Kelvins / 2;
        var kelvins = half > 0 ? Math.Sqrt(Square(OfStated * half) + Square(OneSummer)) : Unstated;
        return new SeasonStray(slope * kelvins, Math.Sqrt(Square(slope * SpellKelvins) + Square(Handling)), slope * OneYear);
    }

    /// <summary>Mean of the year's cosine and sine over an interval, and the share of the spells that is left in it.</summary>
    public (double Cosine, double Sine, double Own) Over(double from, double to)
    {
        var width = to - from;
        if (width <= 0)
            return default;
        var (half, middle) = (Turn * width / 2, Turn * (from + to) / 2);
        var flat = Seasonal * Math.Sin(half) / half;
        var x = width / SpellSeconds;
        return (flat * Math.Cos(middle), flat * Math.Sin(middle), Spells * Math.Sqrt(2 / (x * x) * (x - 1 + Math.Exp(-x))));
    }

    // The logarithm of the loss that a balance can show, for each kelvin.
    private static double Slope(Situation situation, PropertyFacts facts)
    {
        double At(double more) => LossNetwork.At(new LossState(situation with { Temperature = new Temperature(situation.Temperature.Kelvin + more) }, facts)).Weighable.Expected.KilogramsPerSecond;
        var (cool, warm) = (At(-Apart), At(Apart));
        return cool > 0 && warm > cool ? Math.Min(Math.Log(warm / cool) / (2 * Apart), 2 * UsualSlope) : UsualSlope;
    }

    private static double Square(double x) => x * x;
}
