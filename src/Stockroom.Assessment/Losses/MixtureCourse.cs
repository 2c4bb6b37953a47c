namespace Stockroom.Assessment.Losses;

/// <summary>
/// A content of several parts, stepped by the pair of Bogacki and Shampine (third order, second for the error) over the logarithms of the
/// masses: a trace that fades in proportion to itself then runs straight, however fast, and holds up no step. A step is taken when its error
/// lies below a quarter of a thousandth of the mass, of the deciding part's own until that is spent, and of what a part that grows has come to.
/// Source: Bogacki, Shampine, Appl. Math. Lett. 2 (1989) 321.
/// </summary>
internal sealed class MixtureCourse
{
    private const double Tolerance = 2.5e-4;
    private const double FirstStep = 0.04;
    private const double LastOfTheWay = 1.1;

    // A bolder step is refused more often than it saves, and one that widens more may jump a bend unseen.
    private const double Cautious = 0.8;
    private const double Widest = 2.5;
    private const double Negligible = 0.01;
    private const double Gone = 1e-9;
    private const int MostSteps = 400;

    // Steps that would move next to nothing in all the time so far and yet strain the tolerance, so often in a row, mean a balance that steps can
    // only circle.
    private const int Stalled = 3;
    private const double Slowed = 0.01;
    private const double Still = 1e-3;
    private const double Strained = 0.05;

    // Share of its mass at which the deciding part is spent, and how it goes on no matter.
    private const double Spent = 0.005;

    private readonly LossCourse _course;
    private readonly BandEnd _end;
    private readonly double _pace;
    private readonly double[] _kilograms;
    private readonly int? _deciding;
    private double _net;

    private MixtureCourse(LossCourse course, BandEnd end, double pace)
    {
        (_course, _end, _pace) = (course, end, pace);
        _kilograms = new double[course.Parts.Count];
        _deciding = course.Deciding;
    }

    public static Trajectory Follow(LossCourse course, BandEnd end, double pace, double fineness) =>
        new MixtureCourse(course, end, pace).Follow(Tolerance * fineness * fineness * fineness);

    private Trajectory Follow(double tolerance)
    {
        var n = _kilograms.Length;
        var (u, next, second) = (new double[n], new double[n], new double[n]);
        var (k1, k2, k3, k4) = (new double[n], new double[n], new double[n], new double[n]);
        for (var i = 0; i < n; i++)
            u[i] = Math.Log(Math.Max(1e-300, _course.Start.Kilograms * (double)_course.Parts[i].Percent / 100));
        var rate = Slope(u, k1);
        var start = Total(u);
        var (t, mass, first) = (0.0, start, rate);
        var points = new List<Trajectory.Point> { new(0, start, _net) };
        var deciding = _deciding is { } d ? new List<Trajectory.Point> { Deciding(d, 0, u, k1) } : null;
        Trajectory Course() => new(points) { Deciding = deciding is null ? null : new Trajectory(deciding) };
        if (rate * Trajectory.Horizon < Negligible * start)
            return Course();
        var dt = FirstStep * Math.Min(mass / rate, _deciding is { } own && k1[own] != 0 ? 1 / Math.Abs(k1[own]) : double.PositiveInfinity);
        var (step, stalled) = (0, 0);
        for (; step < MostSteps && mass > Trajectory.StopAt * start && t < Trajectory.Horizon && rate > 0 && stalled < Stalled; step++)
        {
            dt = Math.Min(dt, Trajectory.Horizon - t + 1);
            for (var i = 0; i < n; i++)
                next[i] = u[i] + (0.5 * dt * k1[i]);
            Slope(next, k2);
            for (var i = 0; i < n; i++)
                next[i] = u[i] + (0.75 * dt * k2[i]);
            Slope(next, k3);
            for (var i = 0; i < n; i++)
                next[i] = u[i] + (dt * ((2.0 / 9 * k1[i]) + (1.0 / 3 * k2[i]) + (4.0 / 9 * k3[i])));
            var after = Slope(next, k4);
            for (var i = 0; i < n; i++)
                second[i] = u[i] + (dt * ((7.0 / 24 * k1[i]) + (0.25 * k2[i]) + (1.0 / 3 * k3[i]) + (0.125 * k4[i])));
            var ofWhole = Error(u, k1, next, k4, second, dt) / mass;
            var error = Math.Max(ofWhole, ErrorOfOneAlone(u, k1, next, second));
            if (error <= tolerance)
            {
                var taken = new CourseStep(t, dt, _deciding) { From = u, FromSlope = k1, To = next, ToSlope = k4 };
                var end = new Trajectory.Point(t + dt, Total(next), _net);
                if (end.Kilograms < Trajectory.StopAt * start)
                {
                    // The course ends there, wherever the step does.
                    var (last, ofDeciding) = taken.Reaches(Trajectory.StopAt * start);
                    taken.Fill(tolerance, points, last, deciding);
                    points.Add(last with { Rate = Lately(points, last) });
                    deciding?.Add(ofDeciding);
                    break;
                }

                taken.Fill(tolerance, points, end, deciding);
                (u, next) = (next, u);
                (k1, k4) = (k4, k1);
                t += dt;
                (mass, rate) = (end.Kilograms, after);
                points.Add(end);
                if (_deciding is { } part)
                    deciding!.Add(Deciding(part, t, u, k1));
                stalled = rate < Slowed * first && rate * t < Still * start && ofWhole > Strained * tolerance ? stalled + 1 : 0;
            }

            dt *= Math.Clamp(Cautious * Math.Cbrt(tolerance / Math.Max(error, 1e-12)), 0.2, Widest);
        }

        // In balance with the room's moisture, or circling it until the steps run out: what was left then stays.
        if (stalled >= Stalled || (step >= MostSteps && rate < Slowed * first))
        {
            points.Add(new Trajectory.Point(t + dt, mass, 0));
            deciding?.Add(new Trajectory.Point(t + dt, deciding[^1].Kilograms, 0));
        }

        return Course();
    }

    // The last pace is carried on: the mean over the last of the way, for the pace of one point may circle about it.
    private static double Lately(List<Trajectory.Point> points, Trajectory.Point last)
    {
        var since = points[^1];
        for (var i = points.Count - 1; i >= 0 && since.Kilograms < LastOfTheWay * last.Kilograms; i--)
            since = points[i];
        return (since.Kilograms - last.Kilograms) / (last.Seconds - since.Seconds);
    }

    private static Trajectory.Point Deciding(int part, double t, double[] u, double[] slope)
    {
        var kilograms = Math.Exp(u[part]);
        return new Trajectory.Point(t, kilograms, -slope[part] * kilograms);
    }

    // Slopes of the logarithms; returns what moves of the whole in kg/s, out or in, and keeps what is lost of it.
    private double Slope(double[] u, double[] slope)
    {
        var total = 0.0;
        for (var i = 0; i < u.Length; i++)
            total += _kilograms[i] = Math.Exp(u[i]);
        _course.Evaluate(_kilograms);
        var rate = 0.0;
        _net = 0;
        for (var i = 0; i < u.Length; i++)
        {
            var own = _kilograms[i] > Gone * total ? _course.Rate(i, _end, _pace) : 0;
            slope[i] = own == 0 ? 0 : -own / _kilograms[i];
            rate += Math.Abs(own);
            _net += own;
        }

        return rate;
    }

    private static double Total(double[] u)
    {
        var sum = 0.0;
        foreach (var x in u)
            sum += Math.Exp(x);
        return sum;
    }

    // Logarithms apart are relative errors, of what is there halfway through the step: a part may be gone at its end.
    private static double Error(double[] from, double[] fromSlope, double[] a, double[] slope, double[] b, double dt)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++)
        {
            var halfway = ((from[i] + a[i]) / 2) + (dt / 8 * (fromSlope[i] - slope[i]));
            sum += Math.Min(Math.Abs(a[i] - b[i]), 1) * Math.Exp(Math.Clamp(halfway, Math.Min(from[i], a[i]), Math.Max(from[i], a[i])));
        }

        return sum;
    }

    // The deciding part until it is spent, and a little water that comes to much: the strength hangs on either from the start.
    private double ErrorOfOneAlone(double[] from, double[] slope, double[] next, double[] second)
    {
        var worst = 0.0;
        for (var i = 0; i < from.Length; i++)
        {
            if (slope[i] > 0 || (i == _deciding && Math.Exp(from[i]) > Spent * _course.Start.Kilograms * (double)_course.Parts[i].Percent / 100))
                worst = Math.Max(worst, Math.Abs(next[i] - second[i]));
        }

        return worst;
    }
}
