using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>How bands of rates combine.</summary>
internal static class BandMath
{
    /// <summary>Ways out side by side: the expected values add, their independent reaches add as squares.</summary>
    public static Band<MassRate> Sum(IEnumerable<Band<MassRate>> bands)
    {
        var (expected, below, above) = (0.0, 0.0, 0.0);
        foreach (var b in bands)
        {
            var e = b.Expected.KilogramsPerSecond;
            expected += e;
            below += Math.Pow(e - b.Low.KilogramsPerSecond, 2);
            above += Math.Pow(b.High.KilogramsPerSecond - e, 2);
        }

        return new Band<MassRate>(new(Math.Max(0, expected - Math.Sqrt(below))), new(expected), new(expected + Math.Sqrt(above)));
    }

    /// <summary>A rate whose factors are uncertain by different reaches down and up.</summary>
    public static Band<MassRate> Around(MassRate expected, Spread down, Spread up) =>
        new(expected / down.Factor, expected, expected * up.Factor);
}
