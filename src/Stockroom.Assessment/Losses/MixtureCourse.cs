namespace Stockroom.Assessment.Losses;

/// <summary>
/// A content of several parts, stepped by the pair of Bogacki and Shampine (third order, second for the error) over the logarithms of the
/// masses: a trace that fades in proportion to itself then runs straight, however fast, and holds up no step. A step is taken when its error
/// lies below four ten-thousandths of the mass. Source: Bogacki, Shampine, Appl. Math. Lett. 2 (1989) 321.
/// </summary>
internal sealed class MixtureCourse
{
    private const double Tolerance = 4e-4;
    private const double FirstStep = 0.04;
    private const double Negligible = 0.01;
    private const double Gone = 1e-9;
    private const int MostSteps = 400;

    // Steps that move next to nothing and yet strain the tolerance, so often in a row, mean a balance that steps can only circle.
    private const int Stalled = 3;
    private const double Slowed = 0.01;
    private const double Still = 1e-3;
    private const double Strained = 0.05;

    private readonly LossCourse _course;
    private readonly BandEnd _end;
    private readonly double _pace;
    private readonly double[] _kilograms;

    private MixtureCourse(LossCourse course, BandEnd end, double pace)
    {
        (_course, _end, _pace) = (course, end, pace);
        _kilograms = new double[course.Parts.Count];
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
        var (t, mass) = (0.0, start);
        var points = new List<Trajectory.Point> { new(0, start, rate) };
        if (rate * Trajectory.Horizon < Negligible * start)
            return new Trajectory(points);
        var dt = FirstStep * mass / rate;
        var stalled = 0;
        for (var step = 0; step < MostSteps && mass > Trajectory.StopAt * start && t < Trajectory.Horizon && rate > 0 && stalled < Stalled; step++)
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
            var error = Error(next, second) / mass;
            if (error <= tolerance)
            {
                (u, next) = (next, u);
                (k1, k4) = (k4, k1);
                t += dt;
                (mass, rate) = (Total(u), after);
                points.Add(new Trajectory.Point(t, mass, rate));
                stalled = rate < Slowed * points[0].Rate && rate * dt < Still * start && error > Strained * tolerance ? stalled + 1 : 0;
            }

            dt *= Math.Clamp(0.9 * Math.Cbrt(tolerance / Math.Max(error, 1e-12)), 0.2, 4);
        }

        // In balance with the room's moisture: what was left then stays.
        if (stalled >= Stalled)
            points.Add(new Trajectory.Point(t + dt, mass, 0));
        return new Trajectory(points);
    }

    // Slopes of the logarithms; returns the rate of the whole in kg/s.
    private double Slope(double[] u, double[] slope)
    {
        var total = 0.0;
        for (var i = 0; i < u.Length; i++)
            total += _kilograms[i] = Math.Exp(u[i]);
        _course.Evaluate(_kilograms);
        var rate = 0.0;
        for (var i = 0; i < u.Length; i++)
        {
            var own = _kilograms[i] > Gone * total ? _course.Rate(i, _end, _pace) : 0;
            slope[i] = own > 0 ? -own / _kilograms[i] : 0;
            rate += own;
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

    private static double Error(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++)
            sum += Math.Abs(Math.Exp(a[i]) - Math.Exp(b[i]));
        return sum;
    }
}
