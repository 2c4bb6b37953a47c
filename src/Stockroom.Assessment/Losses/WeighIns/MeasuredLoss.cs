using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses.WeighIns;

/// <summary>
/// Loss rate that weighings show: a straight line by weighted least squares through the gross masses, a new start after every draw; the
/// balance's readability and calibration and the changing buoyancy of air as the uncertainty of each. A loss counts positive.
/// </summary>
/// <remarks>Reach: two standard errors, about 95 per cent. Last: the same for the last two weighings alone, where there are more.</remarks>
public sealed record MeasuredLoss(MassRate Rate, MassRate Reach, int Weighings, DateOnly From, DateOnly To, MeasuredLoss? Before, MeasuredLoss? Last)
{
    public MassRate Low => Rate - Reach;

    public MassRate High => Rate + Reach;

    /// <summary>Null where no two weighings stand without a draw between them.</summary>
    public static MeasuredLoss? Of(IReadOnlyList<WeighIn> weighings, IReadOnlyList<Draw> draws, Volume outside) =>
        Of(WeighingSeries.Of(weighings, draws, outside, default));

    internal static MeasuredLoss? Of(WeighingSeries series)
    {
        var segments = Segments(series.Points);
        if (Fit(segments) is not { } fit)
            return null;
        var last = segments[^1];
        if (segments.Sum(s => Math.Max(0, s.Count - 1)) < 2 || last.Count < 2)
            return fit;
        var before = segments.Take(segments.Count - 1).Append(last.Take(last.Count - 1).ToList()).ToList();
        return fit with { Before = Fit(before), Last = Fit([[last[^2], last[^1]]]) };
    }

    private static List<List<WeighingSeries.Point>> Segments(IReadOnlyList<WeighingSeries.Point> points)
    {
        var segments = new List<List<WeighingSeries.Point>>();
        foreach (var p in points)
        {
            if (p.Begins)
                segments.Add([]);
            segments[^1].Add(p);
        }

        return segments;
    }

    private static MeasuredLoss? Fit(List<List<WeighingSeries.Point>> segments)
    {
        var (spread, product) = (0.0, 0.0);
        var used = segments.Where(s => s.Count > 1).ToList();
        foreach (var s in used)
        {
            var sum = s.Sum(p => 1 / p.Variance);
            var meanT = s.Sum(p => p.Seconds / p.Variance) / sum;
            var meanM = s.Sum(p => p.Kilograms / p.Variance) / sum;
            foreach (var p in s)
            {
                spread += (p.Seconds - meanT) * (p.Seconds - meanT) / p.Variance;
                product += (p.Seconds - meanT) * (p.Kilograms - meanM) / p.Variance;
            }
        }

        if (spread <= 0)
            return null;
        return new MeasuredLoss(
            new MassRate(-product / spread), new MassRate(2 / Math.Sqrt(spread)), used.Sum(s => s.Count), used[0][0].On, used[^1][^1].On, null, null);
    }
}
