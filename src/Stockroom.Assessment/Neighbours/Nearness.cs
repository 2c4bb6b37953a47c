namespace Stockroom.Assessment.Neighbours;

/// <summary>How near two things stand, on the scale of separations.</summary>
public static class Nearness
{
    /// <summary>What separates two stands. Null where one of them has no place.</summary>
    /// <remarks>
    /// Different shelves of one cabinet lie above each other, so that trays do not help there. Where the order of
    /// cabinets is not known, they are taken as next to each other.
    /// </remarks>
    public static Separation? Between(Stand a, Stand b)
    {
        if (a.Room is null || b.Room is null)
            return null;
        if (a.Room.Id != b.Room.Id)
            return Separation.FarApart;
        if (a.Cabinet?.Id != b.Cabinet?.Id)
            return AreNextToEachOther(a, b) ? Separation.OwnCabinet : Separation.FarApart;
        return InTraysOfTheirOwn(a, b) && a.Shelf?.Id == b.Shelf?.Id ? Separation.OwnTray : Separation.SameTray;
    }

    /// <summary>True where the first stands on a higher shelf of the same cabinet.</summary>
    public static bool IsAbove(Stand upper, Stand lower) =>
        SharesCabinet(upper, lower) && upper.ShelfOrder is { } high && lower.ShelfOrder is { } low && high > low;

    /// <summary>True where both breathe the same standing air: one cabinet that is not ventilated.</summary>
    public static bool SharesAir(Stand a, Stand b) => SharesCabinet(a, b) && !a.CabinetIsVentilated && !b.CabinetIsVentilated;

    /// <summary>True where both stand in one cabinet, or both in the open of one room.</summary>
    public static bool SharesCabinet(Stand a, Stand b) => a.Room is not null && a.Room.Id == b.Room?.Id && a.Cabinet?.Id == b.Cabinet?.Id;

    private static bool AreNextToEachOther(Stand a, Stand b) =>
        a.CabinetOrder is not { } x || b.CabinetOrder is not { } y || Math.Abs((long)x - y) <= 1;

    private static bool InTraysOfTheirOwn(Stand a, Stand b) =>
        IsHeld(a) && IsHeld(b) && (a.IsInOwnPacking || b.IsInOwnPacking || a.Tray!.Id != b.Tray!.Id);

    private static bool IsHeld(Stand stand) => stand.IsInOwnPacking || (stand.Tray is not null && stand.TrayIsLeakTight);
}
