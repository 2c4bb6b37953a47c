using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// How a loss runs through the year. A rate that goes with the exponential of the season's temperature, exp(a cos), is integrated in
/// closed form: its mean is the modified Bessel function I0(a), its course a sum over I1, I2... "Effective" time runs at an even rate of
/// loss: a year of it is a year. Source: Abramowitz and Stegun, 9.6.34.
/// </summary>
internal readonly record struct Season
{
    private const int Terms = 6;
    private const double Turn = 2 * Math.PI / Span.SecondsPerYear;

    private readonly double[]? _weights;
    private readonly double _start;

    /// <summary>A year in which the logarithm of the rate swings by so much either way about its middle, seen from a day on.</summary>
    public Season(Fraction swing, DateOnly from, int warmestMonth)
    {
        var a = Math.Clamp(swing.Value, -5, 5);
        if (Math.Abs(a) < 1e-6)
            return;
        _weights = new double[Terms];
        var whole = Bessel(0, a);
        for (var n = 1; n <= Terms; n++)
            _weights[n - 1] = 2 * Bessel(n, a) / (whole * n);
        _start = Turn * 86400 * (from.DayNumber - new DateOnly(from.Year, warmestMonth, 16).DayNumber);
    }

    /// <summary>Effective time gone by after so much time on the calendar.</summary>
    public Span Effective(Span elapsed) => new(elapsed.Seconds + Ahead(elapsed.Seconds));

    /// <summary>The time on the calendar after which so much effective time has gone by.</summary>
    public Span Calendar(Span effective)
    {
        if (_weights is null)
            return effective;
        var (low, high) = (effective.Seconds - (Span.SecondsPerYear / 2), effective.Seconds + (Span.SecondsPerYear / 2));
        for (var i = 0; i < 40; i++)
        {
            var middle = (low + high) / 2;
            if (middle + Ahead(middle) < effective.Seconds)
                low = middle;
            else
                high = middle;
        }

        return new Span((low + high) / 2);
    }

    private double Ahead(double seconds)
    {
        if (_weights is null)
            return 0;
        var angle = _start + (Turn * seconds);
        var sum = 0.0;
        for (var n = 1; n <= Terms; n++)
            sum += _weights[n - 1] * (Math.Sin(n * angle) - Math.Sin(n * _start));
        return sum / Turn;
    }

    // Power series of the modified Bessel function of the first kind; the argument is small. Abramowitz and Stegun, 9.6.10.
    internal static double Bessel(int order, double x)
    {
        var term = 1.0;
        for (var k = 1; k <= order; k++)
            term *= x / 2 / k;
        var sum = term;
        for (var k = 1; k < 60 && Math.Abs(term) > 1e-17 * Math.Abs(sum); k++)
        {
            term *= x * x / 4 / (k * (k + order));
            sum += term;
        }

        return sum;
    }
}
