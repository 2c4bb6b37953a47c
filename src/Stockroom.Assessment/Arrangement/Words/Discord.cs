using Stockroom.Assessment.Neighbours;

namespace Stockroom.Assessment.Arrangement.Words;

/// <summary>Two things that stand nearer than they may, as told from the side of the one that is spoken of.</summary>
/// <param name="Other">The other thing.</param>
/// <param name="Relation">How the one stands to the other: "stands above".</param>
/// <param name="Cause">The rule in a few words.</param>
/// <param name="Would">What could happen.</param>
/// <param name="Rank">How bad that is; 0 for the worst.</param>
/// <param name="Needed">What the two need.</param>
/// <param name="ByAir">True where it is the shared air that harms.</param>
internal sealed record Discord(Thing Other, string Relation, string Cause, string Would, int Rank, Separation Needed, bool ByAir)
{
    /// <summary>What stands against two things where they would stand; null where nothing does.</summary>
    public static Discord? Between(Thing one, Stand here, Thing other, Stand there, PairJudge judge)
    {
        var a = new Cluster(0, 0, one.Profile, here with { IsInOwnPacking = one.IsInOwnPacking }, one.IsFlameSealed, []);
        var b = new Cluster(1, 0, other.Profile, there with { IsInOwnPacking = other.IsInOwnPacking }, other.IsFlameSealed, []);
        if (Conflict.Between(a, b, judge.Judge(one.Profile, other.Profile)) is not { } conflict)
            return null;
        return new Discord(other, RelationOf(conflict, here, there), conflict.Cause, WouldOf(conflict.Reason), conflict.Reason.Would.Min(Consequences.Rank), conflict.Needed, conflict.Reason.ByAir);
    }

    private static string RelationOf(Conflict conflict, Stand here, Stand there)
    {
        if (conflict.Reason.ByAir)
            return "shares the air with";
        if (Nearness.IsAbove(here, there))
            return "stands above";
        if (Nearness.IsAbove(there, here))
            return "stands under";
        if (conflict.Has == Separation.SameTray && here.Tray is not null && here.Tray.Id == there.Tray?.Id)
            return "stands in one tray with";
        return conflict.Has >= Separation.OwnCabinet ? "stands in the next cabinet to" : "stands in one cabinet with";
    }

    private static string WouldOf(PairReason reason)
    {
        if (reason.ByAir)
            return reason.Product is { } seen ? $", {seen}" : "";
        var product = reason.Product is null ? "" : $" ({reason.Product})";
        var only = reason.OnlyIf is null ? "" : $" if {reason.OnlyIf}";
        return $", which could bring {Lists.Or([.. reason.Would.Take(3)])}{product}{only}";
    }
}
