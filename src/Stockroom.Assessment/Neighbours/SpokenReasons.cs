namespace Stockroom.Assessment.Neighbours;

/// <summary>
/// Which reason of one judgement weighs most for a given nearness. There are few nearnesses and many containers, so each answer is kept.
/// </summary>
internal sealed class SpokenReasons(PairJudgement judgement)
{
    private const int Nearnesses = 4;

    private readonly (bool Known, PairReason? Reason)[] _kept = new (bool, PairReason?)[Nearnesses * 2];

    /// <summary>The reason that speaks; null where none does.</summary>
    /// <param name="has">What separates the two now.</param>
    /// <param name="airMeets">True where they share standing air.</param>
    /// <param name="unknown">True where one of the two is an orphan, of which no product can be named.</param>
    public PairReason? At(Separation has, bool airMeets, bool unknown)
    {
        ref var kept = ref _kept[((int)has * 2) + (airMeets ? 1 : 0)];
        if (!kept.Known)
            kept = (true, Find(has, airMeets, unknown));
        return kept.Reason;
    }

    private PairReason? Find(Separation has, bool airMeets, bool unknown)
    {
        bool Speaks(PairReason reason) => reason.Separation > has && (!reason.ByAir || airMeets);
        var worst = judgement.Reasons.FirstOrDefault(Speaks);
        if (judgement.ClassReason is { } byClass && byClass.Separation > has && byClass.Separation > (worst?.Separation ?? Separation.SameTray))
            worst = byClass;
        return worst is null || !unknown ? worst : Conflict.OfUnknown(worst, judgement.Reasons.Where(Speaks));
    }
}
