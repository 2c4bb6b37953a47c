namespace Stockroom.Assessment.Losses.WeighIns;

/// <summary>
/// How well a course of losses explains a series of weighings. The mass starts anywhere; it falls by the losses, each interval's off by some
/// share of it (weather, season, handling); the readings scatter by their variance. Between two weighings a
/// step of any size may hide, with one chance in thirty: a draw that nobody booked, a reading that went wrong. All placings of such steps
/// are summed (product partition model); within a run without one, the filter of Kalman.
/// </summary>
internal sealed class SeriesLikelihood(WeighingSeries series, double stepRange, double wobble)
{
    private const double StepChance = 1.0 / 30;
    // The wobble is a share of the loss as weighed, so that it draws the factor neither up nor down; of the computed loss only where that is far larger.
    private const double FarOff = 1.0 / 3;
    private static readonly double LogStays = Math.Log(1 - StepChance);

    private readonly double[] _log = new double[series.Points.Count];
    private readonly double[] _run = new double[series.Points.Count];
    private readonly double[] _mean = new double[series.Points.Count];
    private readonly double[] _variance = new double[series.Points.Count];
    private readonly double _logStep = Math.Log(StepChance / stepRange);

    /// <summary>Share of the likelihood in which the last interval holds a step, of the latest call of <see cref="From"/>.</summary>
    public double LastStep { get; private set; }

    /// <summary>
    /// Logarithm of the likelihood of each weighing and all before it, from one on whose reading is taken as the start; what lies before
    /// that one is left alone.
    /// </summary>
    /// <param name="first">Index of the weighing to start from.</param>
    /// <param name="losses">Kilograms lost up to each weighing.</param>
    public ReadOnlySpan<double> From(int first, ReadOnlySpan<double> losses)
    {
        var points = series.Points;
        LastStep = 0;
        for (var j = first; j < points.Count; j++)
        {
            var p = points[j];
            var begins = j == first || p.Begins;
            var loss = j == first ? 0 : losses[j] - losses[j - 1];
            var off = j == first ? 0 : wobble * Math.Max(Math.Abs(points[j - 1].Kilograms - p.Kilograms), FarOff * Math.Abs(loss));
            for (var i = first; i < j; i++)
                _run[i] = begins ? double.NegativeInfinity : Continued(i, p, off * off, loss);

            // A new run: free where the keeper's hand was booked, at the price of a step elsewhere.
            _run[j] = j == first ? 0 : _log[j - 1] + (begins ? 0 : _logStep);
            (_mean[j], _variance[j]) = (p.Kilograms, p.Variance);
            _log[j] = Sum(_run.AsSpan(first, j - first + 1));
            if (j == points.Count - 1 && !begins)
                LastStep = Math.Exp(_run[j] - _log[j]);
        }

        return _log;
    }

    private double Continued(int run, WeighingSeries.Point p, double wobbles, double loss)
    {
        if (double.IsNegativeInfinity(_run[run]))
            return double.NegativeInfinity;
        var spread = _variance[run] + wobbles;
        var off = p.Kilograms - (_mean[run] - loss);
        var whole = spread + p.Variance;
        var gain = spread / whole;
        _mean[run] = _mean[run] - loss + (gain * off);
        _variance[run] = (1 - gain) * spread;
        return _run[run] + LogStays - (0.5 * (Math.Log(2 * Math.PI * whole) + (off * off / whole)));
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
