namespace Stockroom.Assessment.Losses.WeighIns;

/// <summary>What weighings cannot tell apart from a leak, and is summed over: a share of the moisture that could be taken up, and how slow the walls are.</summary>
/// <remarks>Weight: its chance beside the others'. Lag: the end of the band of lags.</remarks>
internal readonly record struct Unweighed(double Uptake, BandEnd Lag, double Weight)
{
    /// <summary>Nothing taken up, the walls as expected.</summary>
    public static readonly Unweighed Expected = new(0, BandEnd.Expected, 1);

    // Of a band of nine in ten, the middle and both ends stand for the whole with these weights. Source: Keefer, Bodily, Management Science 29 (1983) 595.
    private const double Ends = 0.185;

    /// <summary>Every one that can matter.</summary>
    /// <param name="uptakes">Shares of the moisture, alike likely.</param>
    /// <param name="isBehind">Some wall is not soaked through yet.</param>
    public static IReadOnlyList<Unweighed> All(double[] uptakes, bool isBehind)
    {
        (BandEnd, double)[] lags = isBehind ? [(BandEnd.Low, Ends), (BandEnd.Expected, 1 - (2 * Ends)), (BandEnd.High, Ends)] : [(BandEnd.Expected, 1)];
        return [.. uptakes.SelectMany(u => lags.Select(l => new Unweighed(u, l.Item1, l.Item2)))];
    }
}
