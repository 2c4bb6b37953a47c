using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// The amount over time at one end of the band, in effective time (see <see cref="Season"/>), down to 9 per cent of the start. Beyond the
/// last point the last pace is carried on.
/// </summary>
internal sealed class Trajectory
{
    /// <summary>No course is followed further than this.</summary>
    internal const double Horizon = 500 * Span.SecondsPerYear;

    /// <summary>Share of the start at which a course may stop.</summary>
    internal const double StopAt = 0.09;

    private readonly List<Point> _points;

    internal Trajectory(List<Point> points) => _points = points;

    /// <summary>So much is left after so many seconds, and falls at that rate.</summary>
    internal readonly record struct Point(double Seconds, double Kilograms, double Rate);

    /// <summary>Each end of the band for itself.</summary>
    public static Band<Trajectory> Follow(LossCourse course, double fineness = 1) =>
        Ends(course, fineness, [(BandEnd.Low, 1), (BandEnd.Expected, 1), (BandEnd.High, 1)]);

    /// <summary>The expected course, so many times faster by every way that a balance can show.</summary>
    public static Band<Trajectory> Follow(LossCourse course, Band<double> pace) =>
        Ends(course, 1, [(BandEnd.Expected, pace.Low), (BandEnd.Expected, pace.Expected), (BandEnd.Expected, pace.High)]);

    private static Band<Trajectory> Ends(LossCourse course, double fineness, ReadOnlySpan<(BandEnd End, double Pace)> ends)
    {
        if (course.IsStill || course.Start.Kilograms <= 0)
        {
            var still = new Trajectory([new Point(0, course.Start.Kilograms, 0)]);
            return new Band<Trajectory>(still, still, still);
        }

        var pure = course.IsPure ? PureCourse.Follow(course, fineness) : null;
        Trajectory At((BandEnd End, double Pace) e) => pure?.At(e.End, e.Pace) ?? MixtureCourse.Follow(course, e.End, e.Pace, fineness);
        return new Band<Trajectory>(At(ends[0]), At(ends[1]), At(ends[2]));
    }

    /// <summary>The same course of the deciding part alone, point for point; null where none was asked for.</summary>
    public Trajectory? Deciding { get; init; }

    public Mass Start => new(_points[0].Kilograms);

    /// <summary>The times of the points, in seconds of effective time.</summary>
    public IEnumerable<Span> Times => _points.Select(p => new Span(p.Seconds));

    /// <summary>The last point.</summary>
    public Point Last => _points[^1];

    /// <summary>
    /// Share of the deciding part in the whole after a time, as a share of that at the start. Past the last point, where the vessel is all but
    /// empty or nothing moves any more, it is held.
    /// </summary>
    public Fraction Strength(Span elapsed)
    {
        var s = Math.Min(elapsed.Seconds, _points[^1].Seconds);
        if (Deciding is not { } part || s <= 0 || _points.Count < 2)
            return new Fraction(1);
        var i = After(s);
        return new Fraction(BetweenLogs(part._points[i - 1], part._points[i], s) / part._points[0].Kilograms / (Between(_points[i - 1], _points[i], s) / _points[0].Kilograms));
    }

    /// <summary>Mass left after a time; before the start the amount of the start.</summary>
    public Mass After(Span elapsed)
    {
        var s = elapsed.Seconds;
        if (s <= 0)
            return Start;
        if (s >= Last.Seconds)
            return new Mass(Math.Max(0, Last.Kilograms - (Last.Rate * (s - Last.Seconds))));
        var i = After(s);
        return new Mass(Between(_points[i - 1], _points[i], s));
    }

    /// <summary>When a share of the start is left; null where that lies beyond some 500 years.</summary>
    public Span? Reaches(Fraction left)
    {
        var target = left.Value * _points[0].Kilograms;
        var reached = _points.FindIndex(p => p.Kilograms <= target);
        if (reached < 1 || _points[reached].Seconds > 4 * Horizon)
            return null;
        var (a, b) = (_points[reached - 1], _points[reached]);
        var (low, high) = (a.Seconds, b.Seconds);
        for (var i = 0; i < 50 && high - low > 60; i++)
        {
            var middle = (low + high) / 2;
            if (Between(a, b, middle) > target)
                low = middle;
            else
                high = middle;
        }

        return new Span((low + high) / 2);
    }

    // Index of the first point not before a time within the course.
    private int After(double seconds)
    {
        var (low, high) = (0, _points.Count - 1);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (_points[middle].Seconds < seconds)
                low = middle;
            else
                high = middle;
        }

        return high;
    }

    // A trace that fades in proportion to itself is a straight line here.
    private static double BetweenLogs(Point a, Point b, double s) => a.Kilograms > 0 && b.Kilograms > 0
        ? Math.Exp(Between(new(a.Seconds, Math.Log(a.Kilograms), a.Rate / a.Kilograms), new(b.Seconds, Math.Log(b.Kilograms), b.Rate / b.Kilograms), s))
        : Between(a, b, s);

    /// <summary>Cubic through both amounts with both rates as slopes; held between the two where a rate jumps. In kilograms.</summary>
    internal static double Between(Point a, Point b, double s)
    {
        var width = b.Seconds - a.Seconds;
        var x = (s - a.Seconds) / width;
        var (x2, x3) = (x * x, x * x * x);
        var y = (((2 * x3) - (3 * x2) + 1) * a.Kilograms) + (((3 * x2) - (2 * x3)) * b.Kilograms) - (width * (((x3 - (2 * x2) + x) * a.Rate) + ((x3 - x2) * b.Rate)));
        return Math.Clamp(y, Math.Min(a.Kilograms, b.Kilograms), Math.Max(a.Kilograms, b.Kilograms));
    }
}
