namespace Stockroom.Assessment.Losses.WeighIns;

/// <summary>
/// How well a course of losses explains a series of weighings. The mass starts anywhere; it falls by the losses, each interval's off by some
/// share of it (seasons, weather, handling); the readings scatter by their variance. Between two weighings a
/// step of any size may hide: down with one chance in forty, a draw that nobody booked or a reading that went wrong; up, by such a reading
/// alone or something filled up, with a third of that. All placings of such steps are summed (product partition model); within a run without one, the filter of Kalman over the mass and the two waves of the season.
/// </summary>
internal sealed class SeriesLikelihood
{
    private const double DownChance = 1.0 / 40;
    private const double UpChance = DownChance / 3;

    // The share counts of the geometric mean of the loss as computed and as weighed, so that it draws the factor neither up nor down and hides
    // no step; of the computed loss where that is far larger.
    private const double FarOff = 1.0 / 3;
    private static readonly double LogStays = Math.Log(1 - DownChance - UpChance);

    private readonly WeighingSeries _series;
    private readonly (double Cosine, double Sine, double Own)[] _stray;
    private readonly double[] _log;
    private readonly double[] _run;
    private readonly SeasonFilter[] _filter;
    private readonly double _logDown;
    private readonly double _logUp;

    public SeriesLikelihood(WeighingSeries series, double stepRange, SeasonStray stray)
    {
        var count = series.Points.Count;
        _series = series;
        _logDown = Math.Log(DownChance / stepRange);
        _logUp = Math.Log(UpChance / stepRange);
        (_log, _run, _filter, _stray) = (new double[count], new double[count], new SeasonFilter[count], new (double, double, double)[count]);
        for (var j = 1; j < count; j++)
            _stray[j] = stray.Over(series.Points[j - 1].Seconds, series.Points[j].Seconds);
    }

    /// <summary>Share of the likelihood in which the last interval holds a step down, of the latest call of <see cref="From"/>.</summary>
    public double LastStep { get; private set; }

    /// <summary>
    /// Logarithm of the likelihood of each weighing and all before it, from one on whose reading is taken as the start; what lies before
    /// that one is left alone.
    /// </summary>
    /// <param name="first">Index of the weighing to start from.</param>
    /// <param name="losses">Kilograms lost up to each weighing.</param>
    public ReadOnlySpan<double> From(int first, ReadOnlySpan<double> losses)
    {
        var points = _series.Points;
        LastStep = 0;
        for (var j = first; j < points.Count; j++)
        {
            var p = points[j];
            var begins = j == first || p.Begins;
            var loss = begins ? 0 : losses[j] - losses[j - 1];
            var down = !begins && points[j - 1].Kilograms - p.Kilograms > loss;
            if (!begins)
                Continue(first, j, loss);
            else
                _run.AsSpan(first, j - first).Fill(double.NegativeInfinity);

            // A new run: free where the keeper's hand was booked, at the price of a step elsewhere.
            _run[j] = j == first ? 0 : _log[j - 1] + (begins ? 0 : down ? _logDown : _logUp);
            _filter[j] = SeasonFilter.At(p.Kilograms, p.Variance);
            _log[j] = Sum(_run.AsSpan(first, j - first + 1));
            if (j == points.Count - 1 && down)
                LastStep = Math.Exp(_run[j] - _log[j]);
        }

        return _log;
    }

    private void Continue(int first, int j, double loss)
    {
        var (before, p) = (_series.Points[j - 1], _series.Points[j]);
        var size = Math.Max(Math.Sqrt(Math.Abs((before.Kilograms - p.Kilograms) * loss)), FarOff * Math.Abs(loss));
        var (cosine, sine, own) = _stray[j];
        for (var i = first; i < j; i++)
        {
            if (!double.IsNegativeInfinity(_run[i]))
                _run[i] += LogStays + _filter[i].Step(loss, size * cosine, size * sine, size * own, p.Kilograms, p.Variance);
        }
    }

    private static double Sum(ReadOnlySpan<double> logs)
    {
        var most = double.NegativeInfinity;
        foreach (var x in logs)
            most = Math.Max(most, x);
        if (double.IsNegativeInfinity(most))
            return most;
        var sum = 0.0;
        foreach (var x in logs)
            sum += x > most - 50 ? Math.Exp(x - most) : 0;
        return most + Math.Log(sum);
    }
}
