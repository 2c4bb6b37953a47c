using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Neighbours;

/// <summary>Containers that no judgement tells apart: same content, same place, same kind of seal.</summary>
internal sealed record Cluster(int Index, int ProfileNumber, ContactProfile Profile, Stand Stand, bool IsFlameSealed, IReadOnlyList<ShelfItem> Items);

/// <summary>Two clusters that stand too near, with the rule that weighs most. Its A side is <see cref="A"/>.</summary>
internal sealed record Conflict(Cluster A, Cluster B, PairReason Reason, string Cause, Separation Needed, Separation Has)
{
    private const string Unknown = "content that nobody knows, judged as the worst it could be";

    // By analogy from vehicles to shelves.
    private static readonly Provenance CorrosiveAbove = new("49 CFR 177.848", "(e)(3), by analogy from vehicles to shelves", "2024");

    /// <summary>The worst that stands against two clusters where they stand; null where nothing does.</summary>
    /// <param name="a">Of the judgement's first content.</param>
    /// <param name="b">Of its second.</param>
    /// <param name="judgement">What the two contents are to each other.</param>
    /// <param name="spoken">The reasons of that judgement that were already found to speak, where many clusters are asked about.</param>
    public static Conflict? Between(Cluster a, Cluster b, PairJudgement judgement, SpokenReasons? spoken = null)
    {
        if (Nearness.Between(a.Stand, b.Stand) is not { } has)
            return null;
        var unknown = a.Profile.IsUnknown || b.Profile.IsUnknown;
        var airMeets = Nearness.SharesAir(a.Stand, b.Stand) && !a.IsFlameSealed && !b.IsFlameSealed;
        var worst = (spoken ?? new SpokenReasons(judgement)).At(has, airMeets, unknown);
        if (worst is null && Above(a, b, judgement) is { } above)
            worst = unknown ? OfUnknown(above, []) : above;
        return worst is null ? null : new Conflict(a, b, worst, unknown ? Unknown : worst.Cause, worst.Separation, has);
    }

    // Of what is not known no product can be named; it could bring whatever the worst of its rules say.
    internal static PairReason OfUnknown(PairReason worst, IEnumerable<PairReason> broken) => worst with
    {
        Would = [.. broken.Where(r => r.Separation == worst.Separation).SelectMany(r => r.Would).Append(worst.Would[0]).Distinct(StringComparer.Ordinal).OrderBy(Consequences.Rank).Take(3)],
        Source = worst.Source with { Source = $"house rule for unknown contents, by the strictest rule met: {worst.Source.Source}" },
        Product = null,
        OnlyIf = null,
        ByAir = false,
    };

    private static PairReason? Above(Cluster a, Cluster b, PairJudgement judgement)
    {
        var aAbove = judgement.ANeverAbove && Nearness.IsAbove(a.Stand, b.Stand);
        var bAbove = judgement.BNeverAbove && Nearness.IsAbove(b.Stand, a.Stand);
        if (!aAbove && !bAbove)
            return null;
        const string corrosive = "corrosive liquid";
        const string below = "what it must not fall on";
        return new PairReason(
            aAbove ? corrosive : below, aAbove ? below : corrosive, Separation.OwnTray, ByAir: false, ABreathes: false,
            ["corrosion"], null, null, "corrosive liquid above something that burns or feeds a fire", CorrosiveAbove, Verified: true, int.MaxValue);
    }
}
