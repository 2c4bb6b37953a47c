using Stockroom.Assessment.Neighbours;

namespace Stockroom.Assessment.Arrangement.Search;

/// <summary>How near each pair of spots is, in one byte, for things with and without a packing that holds what leaks.</summary>
internal static class NearnessTable
{
    /// <summary>Number of different nearnesses.</summary>
    public const int Count = 32;

    /// <summary>First neither packed, then the second, then the first, then both.</summary>
    public static byte[] Of(IReadOnlyList<Spot> spots)
    {
        var nearness = new byte[4 * spots.Count * spots.Count];
        for (var packed = 0; packed < 4; packed++)
        {
            var first = Stands(spots, packed >= 2);
            var second = Stands(spots, packed % 2 == 1);
            for (var p = 0; p < spots.Count; p++)
            {
                for (var q = 0; q < spots.Count; q++)
                    nearness[(((packed * spots.Count) + p) * spots.Count) + q] = Code(first[p], second[q]);
            }
        }

        return nearness;
    }

    private static Stand[] Stands(IReadOnlyList<Spot> spots, bool isPacked) => [.. spots.Select(s => s.Stand with { IsInOwnPacking = isPacked })];

    /// <summary>False for two spots so far apart that nothing in them can clash.</summary>
    public static bool CanClash(int code) => code >> 3 != (int)Separation.FarApart;

    public static (Separation Separation, bool SharesAir, bool FirstIsAbove, bool SecondIsAbove) Decode(int code) =>
        ((Separation)(code >> 3), (code & 4) != 0, (code & 2) != 0, (code & 1) != 0);

    // Two stands of which one is not known cannot clash: nothing can be said of them.
    private static byte Code(Stand a, Stand b) => Nearness.Between(a, b) is not { } separation
        ? (byte)((int)Separation.FarApart << 3)
        : (byte)(((int)separation << 3) | (Nearness.SharesAir(a, b) ? 4 : 0) | (Nearness.IsAbove(a, b) ? 2 : 0) | (Nearness.IsAbove(b, a) ? 1 : 0));
}

/// <summary>By how much a need is missed at a nearness, for each of both.</summary>
internal static class ShortfallTable
{
    public static byte[] All { get; } = Make();

    private static byte[] Make()
    {
        var table = new byte[NeedTable.Count * NearnessTable.Count];
        for (var need = 0; need < NeedTable.Count; need++)
        {
            for (var near = 0; near < NearnessTable.Count; near++)
                table[(need * NearnessTable.Count) + near] = (byte)Shortfall(need, near);
        }

        return table;
    }

    private static int Shortfall(int need, int near)
    {
        var (inAir, withoutAir, firstNever, secondNever) = NeedTable.Decode(need);
        var (separation, air, firstAbove, secondAbove) = NearnessTable.Decode(near);
        var missing = Math.Max(0, (air ? inAir : withoutAir) - separation);
        return missing == 0 && ((firstNever && firstAbove) || (secondNever && secondAbove)) ? 1 : missing;
    }
}
