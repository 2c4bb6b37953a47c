using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses.WeighIns;

/// <summary>
/// What is thought of a leak before weighing, on a grid of the logarithm of its factor over the expected: log-normal with the network's
/// band as its 5 and 95 per cent, either side its own width; beside it one closure in twenty that fails, anything from the band's high end
/// to a hundred times that, and one in fifty far tighter than thought.
/// </summary>
internal sealed class LeakPrior
{
    /// <summary>Step of the grid in the logarithm of the factor.</summary>
    public const double Step = 0.05;

    private const double FailingShare = 0.05;
    private const double TightShare = 0.02;
    private static readonly double Hundredfold = Math.Log(100);
    private static readonly double LeastReach = Math.Log(1.3);

    private LeakPrior(double[] logFactor, double[] density, double[] failing)
    {
        LogFactor = logFactor;
        Density = density;
        Failing = failing;
    }

    public double[] LogFactor { get; }

    /// <summary>Prior weight of each point of the grid; they sum to one.</summary>
    public double[] Density { get; }

    /// <summary>Which share of the weight at each point belongs to a closure that fails.</summary>
    public double[] Failing { get; }

    /// <summary>About an expected rate; where some way out could not be computed, more than the band is taken to be likely.</summary>
    public static LeakPrior About(Band<MassRate> band, bool complete)
    {
        var below = Math.Clamp(Math.Log(band.Expected / band.Low), LeastReach, Hundredfold);
        var above = Math.Clamp(Math.Log(band.High / band.Expected), LeastReach, Hundredfold);
        var failingShare = complete ? FailingShare : 0.5;
        var (down, up) = (below / BandMath.EndsAt, above / BandMath.EndsAt);
        return Make(-below - Hundredfold, above + Hundredfold + 1, x =>
        {
            var z = x < 0 ? x / down : x / up;
            var honest = (1 - failingShare - TightShare) * Math.Exp(-z * z / 2) / (Math.Sqrt(2 * Math.PI) * (x < 0 ? down : up));
            var tight = x < -below ? TightShare / Hundredfold : 0;
            return (honest + tight, x > above ? failingShare / Hundredfold : 0);
        });
    }

    /// <summary>Where nothing should leave: an honest seal, or one that fails by any rate between two.</summary>
    public static LeakPrior Tight(double leastLog, double mostLog) =>
        Make(leastLog, mostLog, x => x < leastLog + (Step / 2) ? ((1 - FailingShare) / Step, 0) : (0, FailingShare / (mostLog - leastLog)));

    /// <summary>Where nothing is known of the way out.</summary>
    public static LeakPrior Open(double leastLog, double mostLog) => Make(leastLog, mostLog, _ => (1, 0));

    private static LeakPrior Make(double from, double to, Func<double, (double Honest, double Failing)> density)
    {
        var count = (int)Math.Ceiling((to - from) / Step) + 1;
        var (x, p, failing) = (new double[count], new double[count], new double[count]);
        var sum = 0.0;
        for (var i = 0; i < count; i++)
        {
            x[i] = from + (i * Step);
            var (honest, fails) = density(x[i]);
            p[i] = honest + fails;
            failing[i] = p[i] > 0 ? fails / p[i] : 0;
            sum += p[i];
        }

        for (var i = 0; i < count; i++)
            p[i] /= sum;
        return new LeakPrior(x, p, failing);
    }
}
