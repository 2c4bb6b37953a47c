using Stockroom.Assessment.Neighbours;

namespace Stockroom.Assessment.Arrangement.Search;

/// <summary>What each pair of groups needs, in one byte: 0 where nothing stands against them anywhere.</summary>
internal static class NeedTable
{
    /// <summary>Number of different needs.</summary>
    public const int Count = 64;

    public static byte[] Of(IReadOnlyList<Thing> groups, PairJudge judge)
    {
        var needs = new byte[groups.Count * groups.Count];
        for (var g = 0; g < groups.Count; g++)
        {
            for (var h = g; h < groups.Count; h++)
            {
                if (!judge.MayConflict(groups[g].Profile, groups[h].Profile))
                    continue;
                var judgement = judge.Judge(groups[g].Profile, groups[h].Profile);
                var airMeets = !groups[g].IsFlameSealed && !groups[h].IsFlameSealed;
                var inAir = airMeets ? judgement.Separation : judgement.WithoutAir;
                needs[(g * groups.Count) + h] = Code(inAir, judgement.WithoutAir, judgement.ANeverAbove, judgement.BNeverAbove);
                needs[(h * groups.Count) + g] = Code(inAir, judgement.WithoutAir, judgement.BNeverAbove, judgement.ANeverAbove);
            }
        }

        return needs;
    }

    public static (Separation InAir, Separation WithoutAir, bool FirstNeverAbove, bool SecondNeverAbove) Decode(int code) =>
        ((Separation)(code >> 4), (Separation)((code >> 2) & 3), (code & 2) != 0, (code & 1) != 0);

    private static byte Code(Separation inAir, Separation withoutAir, bool firstNeverAbove, bool secondNeverAbove) =>
        (byte)(((int)inAir << 4) | ((int)withoutAir << 2) | (firstNeverAbove ? 2 : 0) | (secondNeverAbove ? 1 : 0));
}
