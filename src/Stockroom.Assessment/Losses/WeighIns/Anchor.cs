using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses.WeighIns;

/// <summary>
/// What went from the day on which the amount was known to the last weighing: by the readings and by the course together where they compare,
/// each as it is sure; by the readings alone where they stand against the course (something was taken unbooked); by the course where
/// nothing compares, and where a cover or moisture is weighed along.
/// </summary>
/// <param name="Lost">Kilograms of content, draws that were booked not counted.</param>
/// <param name="Deviation">One standard deviation of what rests on readings.</param>
/// <param name="ByCourse">What of it rests on the course alone: it is out by as much as the factor is.</param>
internal readonly record struct Anchor(Mass Lost, Mass Deviation, Mass ByCourse)
{
    private const double StandsAgainst = 3;

    public static Anchor Of(Evidence evidence, DateOnly amountOn, bool onlyContentIsWeighed)
    {
        var points = evidence.Series.Points;
        var factor = evidence.Posterior.Factor;
        var spread = factor.Low > 0 ? Math.Log(factor.High / factor.Low) / (2 * BandMath.EndsAt) : 1;
        var (since, first) = (amountOn.DayNumber * 86400.0, points[0].Seconds);
        double Course(double from, double to) =>
            Math.Max(0, (evidence.Lost(new Span(to - first), factor.Expected) - evidence.Lost(new Span(from - first), factor.Expected)).Kilograms);
        var (lost, variance, byCourse) = (0.0, 0.0, 0.0);
        for (var i = 0; i < points.Count; i++)
        {
            if (points[i].Seconds <= since)
                continue;
            var start = i;
            while (start > 0 && !points[start].Begins && onlyContentIsWeighed && points[start - 1].Seconds >= since)
                start--;
            var end = i;
            while (start < i && end + 1 < points.Count && !points[end + 1].Begins)
                end++;
            if (start == i)
            {
                byCourse += Course(Math.Max(since, i > 0 ? points[i - 1].Seconds : since), points[i].Seconds);
                continue;
            }

            var (seen, uncertain) = Together(
                points[start].Kilograms - points[end].Kilograms, points[start].Variance + points[end].Variance, Course(points[start].Seconds, points[end].Seconds), spread, evidence.Stray.Over(points[start].Seconds, points[end].Seconds));
            (lost, variance, i) = (lost + seen, variance + uncertain, end);
        }

        return new Anchor(new Mass(Math.Max(0, lost + byCourse)), new Mass(Math.Sqrt(variance)), new Mass(byCourse));
    }

    // The factor was itself learnt from these readings: the surer of the two says how sure both are.
    private static (double Lost, double Variance) Together(double read, double readVariance, double course, double spread, (double Cosine, double Sine, double Own) stray)
    {
        var courseVariance = Square(course) * (Square(spread) + Square(stray.Cosine) + Square(stray.Sine) + Square(stray.Own));
        if (courseVariance <= 0 || Math.Abs(read - course) > StandsAgainst * Math.Sqrt(readVariance + courseVariance))
            return (read, readVariance);
        var weight = readVariance / (readVariance + courseVariance);
        return (read + (weight * (course - read)), Math.Min(readVariance, courseVariance));
    }

    private static double Square(double x) => x * x;
}
