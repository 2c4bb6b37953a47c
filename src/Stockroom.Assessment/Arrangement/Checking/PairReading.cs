using Stockroom.Assessment.Neighbours;

namespace Stockroom.Assessment.Arrangement.Checking;

/// <summary>The checker's own reading of how near two things stand and how near they may; it rests on the pair's judgement alone.</summary>
public static class PairReading
{
    /// <summary>By how many steps of the scale two things stand nearer than they may; 0 where they may.</summary>
    public static int Missing(Thing a, Spot at, Thing b, Spot other, PairJudge judge)
    {
        var (x, y) = (at.Stand, other.Stand);
        if (x.Room is null || y.Room is null || x.Room.Id != y.Room.Id)
            return 0;
        var judgement = judge.Judge(a.Profile, b.Profile);
        var sameCabinet = x.Cabinet?.Id == y.Cabinet?.Id;
        var air = sameCabinet && !x.CabinetIsVentilated && !y.CabinetIsVentilated && !a.IsFlameSealed && !b.IsFlameSealed;
        var need = (int)(air ? judgement.Separation : judgement.WithoutAir);
        var have = sameCabinet ? WithinCabinet(x, a.IsInOwnPacking, y, b.IsInOwnPacking) : AcrossCabinets(x, y);
        if (need > have)
            return need - have;
        return sameCabinet && (StandsOver(x, y, judgement.ANeverAbove) || StandsOver(y, x, judgement.BNeverAbove)) ? 1 : 0;
    }

    // A packing that holds what leaks counts as a tray of the thing's own.
    private static int WithinCabinet(Stand x, bool xIsPacked, Stand y, bool yIsPacked)
    {
        var bothHeld = (xIsPacked || (x.Tray is not null && x.TrayIsLeakTight)) && (yIsPacked || (y.Tray is not null && y.TrayIsLeakTight));
        var ownTrays = bothHeld && (xIsPacked || yIsPacked || x.Tray?.Id != y.Tray?.Id);
        return ownTrays && x.Shelf?.Id == y.Shelf?.Id ? (int)Separation.OwnTray : (int)Separation.SameTray;
    }

    private static int AcrossCabinets(Stand x, Stand y)
    {
        var gap = x.CabinetOrder is { } one && y.CabinetOrder is { } two ? Math.Abs((long)one - two) : 0;
        return gap > 1 ? (int)Separation.FarApart : (int)Separation.OwnCabinet;
    }

    private static bool StandsOver(Stand upper, Stand lower, bool mustNot) => mustNot && upper.ShelfOrder > lower.ShelfOrder;
}
