using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// A content of several parts, stepped by the midpoint rule: no step takes more than a tenth of any part, nor moves the rate by a fifth, so
/// that halving the steps moves nothing by half a per cent. A part that has become a trace fades in proportion to what is left of it and
/// holds up no step.
/// </summary>
internal static class MixtureCourse
{
    private const double Share = 0.1;
    private const double Trace = 0.002;
    private const double MostChange = 0.2;
    private const double Negligible = 0.01;

    public static Trajectory Follow(LossCourse course, BandEnd end, double pace, double fineness)
    {
        var mass = course.Parts.Select(p => course.Start.Kilograms * (double)p.Percent / 100).ToArray();
        var start = mass.Sum();
        var points = new List<Trajectory.Point>();
        var (t, before) = (0.0, double.PositiveInfinity);
        for (var step = 0; step < 2000; step++)
        {
            var total = mass.Sum();
            var rates = Rates(course, mass, end, pace);
            points.Add(new Trajectory.Point(t, total, rates.Sum()));
            if (total <= Trajectory.StopAt * start || t >= Trajectory.Horizon)
                break;
            if (rates.Sum() * Trajectory.Horizon < Negligible * start || Step(mass, rates, total, Share * fineness) is not { } seconds)
                break;
            seconds = Math.Min(Math.Min(seconds, 2.5 * before), Trajectory.Horizon - t);
            var halfway = Advance(mass, mass, rates, seconds / 2);
            var between = Rates(course, halfway, end, pace);
            for (var halved = 0; halved < 8 && Change(rates, between) > MostChange * fineness; halved++)
            {
                seconds /= 2;
                halfway = Advance(mass, mass, rates, seconds / 2);
                between = Rates(course, halfway, end, pace);
            }

            mass = Advance(mass, halfway, between, seconds);
            before = seconds;
            t += seconds;
        }

        return new Trajectory(points);
    }

    private static double[] Rates(LossCourse course, double[] mass, BandEnd end, double pace)
    {
        var weighable = new Band<MassRate>[mass.Length];
        var transmuted = new Band<MassRate>[mass.Length];
        course.Rates(mass, weighable, transmuted);
        var rates = new double[mass.Length];
        for (var i = 0; i < rates.Length; i++)
            rates[i] = (pace * PureCourse.Pick(weighable[i], end)) + PureCourse.Pick(transmuted[i], end);
        return rates;
    }

    private static double? Step(double[] mass, double[] rates, double total, double share)
    {
        double? dt = null;
        for (var i = 0; i < mass.Length; i++)
        {
            if (rates[i] <= 0 || mass[i] < Trace * total)
                continue;
            var own = share * mass[i] / rates[i];
            dt = dt is { } d ? Math.Min(d, own) : own;
        }

        return dt;
    }

    // How much the whole rate moves over half a step; strong acids weaken fast and need short steps.
    private static double Change(double[] at, double[] halfway)
    {
        var (sum, moved) = (0.0, 0.0);
        for (var i = 0; i < at.Length; i++)
        {
            sum += at[i];
            moved += Math.Abs(at[i] - halfway[i]);
        }

        return sum > 0 ? moved / sum : 0;
    }

    private static double[] Advance(double[] mass, double[] from, double[] rates, double seconds)
    {
        var total = from.Sum();
        var after = new double[mass.Length];
        for (var i = 0; i < mass.Length; i++)
        {
            after[i] = from[i] < Trace * total
                ? (from[i] > 0 ? mass[i] * Math.Exp(-rates[i] / from[i] * seconds) : 0)
                : Math.Max(0, mass[i] - (rates[i] * seconds));
        }

        return after;
    }
}
