using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses.WeighIns;

/// <summary>
/// Weighings in order, each reduced to usual air, with its variance: one step of the balance for rounding and repeatability, its
/// calibration, and the air. Whatever was done by hand between two begins a new segment.
/// </summary>
internal sealed class WeighingSeries
{
    // Span drift of laboratory balances that nobody adjusts: some 2 ppm/K over 10 K (from memory: makers' specifications).
    private const double UnstatedCalibration = 2e-5;

    private WeighingSeries(IReadOnlyList<Point> points) => Points = points;

    /// <summary>Grams and seconds would do as well; SI is held. Begins: nothing that was read before compares with it.</summary>
    internal readonly record struct Point(DateOnly On, double Seconds, double Kilograms, double Variance, bool Begins);

    public IReadOnlyList<Point> Points { get; }

    /// <summary>True where at least two weighings compare.</summary>
    public bool HasInterval => Points.Any(p => !p.Begins);

    public static WeighingSeries Of(IReadOnlyList<WeighIn> weighings, IReadOnlyList<Draw> draws, Volume outside, Volume breathing)
    {
        var points = new List<Point>(weighings.Count);
        WeighIn? previous = null;
        foreach (var w in weighings.OrderBy(w => w.On).ThenBy(w => w.Order))
        {
            var (reading, air) = Buoyancy.InUsualAir(w, outside, breathing);
            var calibration = w.Calibration?.Kilograms ?? (UnstatedCalibration * w.Gross.Kilograms);
            var variance = Square(w.Readability.Kilograms) + Square(calibration) + Square(air.Kilograms);
            var begins = previous is null || draws.Any(d => Between(d, previous, w));
            points.Add(new Point(w.On, w.On.DayNumber * 86400.0, reading.Kilograms, variance, begins));
            previous = w;
        }

        return new WeighingSeries(points);
    }

    /// <summary>The latest so many.</summary>
    public WeighingSeries Latest(int most)
    {
        if (Points.Count <= most)
            return this;
        var kept = Points.Skip(Points.Count - most).ToList();
        kept[0] = kept[0] with { Begins = true };
        return new WeighingSeries(kept);
    }

    // Of one day, the order of booking tells where it is known; else what was done by hand came first, as it does where one entry says both.
    private static bool Between(Draw d, WeighIn before, WeighIn after)
    {
        var since = d.On > before.On || (d.On == before.On && d.Order > 0 && before.Order > 0 && d.Order > before.Order);
        var until = d.On < after.On || (d.On == after.On && (d.Order == 0 || after.Order == 0 || d.Order <= after.Order));
        return since && until;
    }

    private static double Square(double x) => x * x;
}
