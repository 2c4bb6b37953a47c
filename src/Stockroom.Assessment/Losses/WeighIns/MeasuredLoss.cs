using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses.WeighIns;

/// <summary>
/// Loss rate that weighings show: a straight line by least squares through the gross masses, a new start after every draw, the
/// balance's readability and the changing buoyancy of air as the uncertainty of each. A loss counts positive.
/// </summary>
/// <remarks>Reach: two standard errors, about 95 per cent. Last: the same for the last two weighings alone, where there are more.</remarks>
public sealed record MeasuredLoss(MassRate Rate, MassRate Reach, int Weighings, DateOnly From, DateOnly To, MeasuredLoss? Before, MeasuredLoss? Last)
{
    // Density of room air moves about 0.03 kg/m3 (one standard deviation) with weather and warmth.
    private const double AirDensityMoves = 0.03;

    public MassRate Low => Rate - Reach;

    public MassRate High => Rate + Reach;

    /// <summary>Null where no two weighings stand without a draw between them.</summary>
    public static MeasuredLoss? Of(IReadOnlyList<WeighIn> weighings, IReadOnlyList<Draw> draws, Volume outside)
    {
        var segments = Segments(weighings, draws);
        if (Fit(segments, outside) is not { } fit)
            return null;
        var last = segments[^1];
        if (segments.Sum(s => Math.Max(0, s.Count - 1)) < 2 || last.Count < 2)
            return fit;
        var before = segments.Take(segments.Count - 1).Append(last.Take(last.Count - 1).ToList()).ToList();
        return fit with { Before = Fit(before, outside), Last = Fit([[last[^2], last[^1]]], outside) };
    }

    private static List<List<WeighIn>> Segments(IReadOnlyList<WeighIn> weighings, IReadOnlyList<Draw> draws)
    {
        var segments = new List<List<WeighIn>> { new() };
        WeighIn? previous = null;
        foreach (var w in weighings.OrderBy(w => w.On))
        {
            if (previous is not null && draws.Any(d => d.On > previous.On && d.On <= w.On))
                segments.Add([]);
            segments[^1].Add(w);
            previous = w;
        }

        return segments;
    }

    private static MeasuredLoss? Fit(IReadOnlyList<List<WeighIn>> segments, Volume outside)
    {
        var (spread, product, count) = (0.0, 0.0, 0);
        foreach (var s in segments.Where(s => s.Count > 1))
        {
            var weights = s.Select(w => 1 / Variance(w, outside)).ToList();
            var sum = weights.Sum();
            var meanT = s.Select((w, i) => weights[i] * Seconds(w)).Sum() / sum;
            var meanM = s.Select((w, i) => weights[i] * w.Gross.Kilograms).Sum() / sum;
            for (var i = 0; i < s.Count; i++)
            {
                var dt = Seconds(s[i]) - meanT;
                spread += weights[i] * dt * dt;
                product += weights[i] * dt * (s[i].Gross.Kilograms - meanM);
            }

            count += s.Count;
        }

        if (spread <= 0)
            return null;
        var used = segments.Where(s => s.Count > 1).SelectMany(s => s).ToList();
        return new MeasuredLoss(new MassRate(-product / spread), new MassRate(2 / Math.Sqrt(spread)), count, used.Min(w => w.On), used.Max(w => w.On), null, null);
    }

    private static double Seconds(WeighIn w) => w.On.DayNumber * 86400.0;

    private static double Variance(WeighIn w, Volume outside)
    {
        var air = outside.CubicMetres * AirDensityMoves;
        return (w.Readability.Kilograms * w.Readability.Kilograms) + (air * air);
    }
}
