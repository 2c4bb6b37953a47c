using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses.WeighIns;

/// <summary>Kilograms lost up to each weighing: by one factor on the leak until a weighing, by another from then on, and what weighings cannot tell from it.</summary>
internal delegate void LossesAt(double before, int changesAt, double factor, Unweighed unweighed, Span<double> losses);

/// <summary>
/// Prior times likelihood, over the grid of the leak's factor: one factor throughout, or a closure that begins to leak, from three to three
/// hundred times faster, at one of the weighings (one chance in fifty at each).
/// </summary>
internal sealed class LeakPosterior
{
    private const double ChangeChance = 0.02;
    private const int MostChanges = 10;
    private static readonly double LeastJump = Math.Log(3);
    private static readonly double MostJump = Math.Log(300);

    private readonly LeakPrior _prior;
    private readonly double[] _weights;

    private LeakPosterior(LeakPrior prior)
    {
        _prior = prior;
        _weights = new double[prior.LogFactor.Length];
    }

    /// <summary>The factor of today: 5, 50 and 95 per cent, widened by what next year may differ from the years weighed.</summary>
    public Band<double> Factor { get; private set; }

    /// <summary>Chance that the closure fails, or has begun to leak.</summary>
    public double Failing { get; private set; }

    /// <summary>Of that, the chance that it has begun to leak since the first weighings.</summary>
    public double Begun { get; private set; }

    /// <summary>Chance that the last interval holds a step down that no leak explains.</summary>
    public double LastStep { get; private set; }

    public static LeakPosterior Of(WeighingSeries series, LeakPrior prior, LossesAt losses, double stepRange, SeasonStray stray, IReadOnlyList<Unweighed> unweighed)
    {
        var posterior = new LeakPosterior(prior);
        posterior.Weigh(series, losses, new SeriesLikelihood(series, stepRange, stray), unweighed);
        posterior.Finish(stray.NextYear);
        return posterior;
    }

    private void Weigh(WeighingSeries series, LossesAt losses, SeriesLikelihood likelihood, IReadOnlyList<Unweighed> unweighed)
    {
        var (points, grid) = (series.Points.Count, _prior.LogFactor.Length);
        var changes = Enumerable.Range(1, Math.Max(0, points - 2)).Where(c => CanChange(series, c)).TakeLast(MostChanges).ToArray();
        var (steady, step) = (new double[unweighed.Count, grid], new double[unweighed.Count, grid]);
        var (until, since) = (new double[changes.Length, unweighed.Count, grid], new double[changes.Length, unweighed.Count, grid]);
        var lost = new double[points];
        var most = double.NegativeInfinity;
        for (var u = 0; u < unweighed.Count; u++)
        {
            for (var g = 0; g < grid; g++)
            {
                losses(0, 0, Math.Exp(_prior.LogFactor[g]), unweighed[u], lost);
                var log = likelihood.From(0, lost);
                steady[u, g] = log[points - 1];
                step[u, g] = likelihood.LastStep;
                for (var c = 0; c < changes.Length; c++)
                    until[c, u, g] = log[changes[c]];
                if (_prior.Density[g] > 0)
                    most = Math.Max(most, steady[u, g] + Math.Log(_prior.Density[g]));
            }

            // How full and how strong it was when the leak began: by the likeliest factor until then.
            for (var c = 0; c < changes.Length; c++)
            {
                var before = Math.Exp(_prior.LogFactor[Likeliest(Row(until, c, u))]);
                for (var g = 0; g < grid; g++)
                {
                    losses(before, changes[c], Math.Exp(_prior.LogFactor[g]), unweighed[u], lost);
                    since[c, u, g] = likelihood.From(changes[c], lost)[points - 1];
                }
            }
        }

        for (var u = 0; u < unweighed.Count; u++)
        {
            for (var g = 0; g < grid; g++)
            {
                var w = unweighed[u].Weight * _prior.Density[g] * Math.Exp(steady[u, g] - most);
                _weights[g] += w;
                LastStep += w * step[u, g];
                Failing += w * (1 - step[u, g]) * _prior.Failing[g];
            }

            for (var c = 0; c < changes.Length; c++)
                AddChange(Row(until, c, u), Row(since, c, u), most, unweighed[u].Weight);
        }
    }

    private int Likeliest(double[] until) =>
        Enumerable.Range(0, until.Length).MaxBy(g => _prior.Density[g] > 0 ? until[g] + Math.Log(_prior.Density[g]) : double.NegativeInfinity);

    // A change shows only where something was weighed on either side of it.
    private static bool CanChange(WeighingSeries series, int at) =>
        Enumerable.Range(1, at).Any(i => !series.Points[i].Begins) && Enumerable.Range(at + 1, series.Points.Count - at - 1).Any(i => !series.Points[i].Begins);

    private void AddChange(double[] until, double[] since, double most, double weight)
    {
        var (near, far) = ((int)Math.Round(LeastJump / LeakPrior.Step), (int)Math.Round(MostJump / LeakPrior.Step));
        var each = ChangeChance / (far - near);
        var (window, top) = (0.0, until.Max());
        var before = new double[until.Length];
        for (var g = 0; g < until.Length; g++)
        {
            before[g] = _prior.Density[g] * Math.Exp(until[g] - top);
            if (g >= near)
                window += before[g - near];
            if (g >= far)
                window -= before[g - far];
            var w = weight * each * Math.Max(0, window) * Math.Exp(Math.Min(600, since[g] + top - most));
            _weights[g] += w;
            Begun += w;
        }
    }

    private void Finish(double nextYear)
    {
        var whole = _weights.Sum();
        Failing = (Failing + Begun) / whole;
        Begun /= whole;
        LastStep /= whole;
        var (low, middle, high) = (Quantile(0.05 * whole), Quantile(0.5 * whole), Quantile(0.95 * whole));
        var ahead = BandMath.EndsAt * nextYear;
        Factor = new Band<double>(
            Math.Exp(middle - Math.Sqrt(((middle - low) * (middle - low)) + (ahead * ahead))),
            Math.Exp(middle),
            Math.Exp(middle + Math.Sqrt(((high - middle) * (high - middle)) + (ahead * ahead))));
    }

    private double Quantile(double weight)
    {
        var sum = 0.0;
        for (var g = 0; g < _weights.Length; g++)
        {
            if (sum + _weights[g] >= weight)
                return _prior.LogFactor[g] + (LeakPrior.Step * (((weight - sum) / _weights[g]) - 0.5));
            sum += _weights[g];
        }

        return _prior.LogFactor[^1];
    }

    private static double[] Row(double[,,] table, int i, int j)
    {
        var row = new double[table.GetLength(2)];
        for (var k = 0; k < row.Length; k++)
            row[k] = table[i, j, k];
        return row;
    }
}
