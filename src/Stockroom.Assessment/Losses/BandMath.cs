using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// How bands of rates combine. Low and High of a forecast are meant as 5 and 95 per cent: nine times of ten the truth lies between them.
/// Expected is the middle (median), about which a closure's factor lies evenly on a logarithmic scale.
/// </summary>
internal static class BandMath
{
    /// <summary>Standard deviations from the middle to either end of a band of nine in ten.</summary>
    public const double EndsAt = 1.6449;

    /// <summary>Ways out side by side: the expected values add, their independent reaches add as squares.</summary>
    public static Band<MassRate> Sum(IEnumerable<Band<MassRate>> bands)
    {
        var (expected, below, above) = (0.0, 0.0, 0.0);
        foreach (var b in bands)
        {
            var e = b.Expected.KilogramsPerSecond;
            expected += e;
            below += Square(e - b.Low.KilogramsPerSecond);
            above += Square(b.High.KilogramsPerSecond - e);
        }

        return new Band<MassRate>(new(Math.Max(0, expected - Math.Sqrt(below))), new(expected), new(expected + Math.Sqrt(above)));
    }

    /// <summary>Parts that go by one and the same way: their ends go together.</summary>
    public static Band<MassRate> Linear(IEnumerable<Band<MassRate>> bands)
    {
        var (low, expected, high) = (0.0, 0.0, 0.0);
        foreach (var b in bands)
        {
            low += b.Low.KilogramsPerSecond;
            expected += b.Expected.KilogramsPerSecond;
            high += b.High.KilogramsPerSecond;
        }

        return new Band<MassRate>(new(low), new(expected), new(high));
    }

    /// <summary>A rate whose factors are uncertain by different reaches down and up.</summary>
    public static Band<MassRate> Around(MassRate expected, Spread down, Spread up) =>
        new(expected / down.Factor, expected, expected * up.Factor);

    private static double Square(double x) => x * x;
}
