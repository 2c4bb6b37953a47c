using Stockroom.Assessment.Neighbours;

namespace Stockroom.Assessment.Tests.Neighbours;

/// <summary>Places and things on them, in few words.</summary>
internal static class Shelves
{
    private static readonly PlaceName PrepRoom = new("P1", "prep room");

    public static Stand At(string cabinet, int shelf, string? tray = null, int? order = null, bool ventilated = false) => new()
    {
        Room = PrepRoom,
        Cabinet = new PlaceName(cabinet, cabinet),
        Shelf = new PlaceName($"{cabinet}-{shelf}", $"shelf {shelf}"),
        Tray = tray is null ? null : new PlaceName(tray, tray),
        CabinetOrder = order,
        ShelfOrder = shelf,
        CabinetIsVentilated = ventilated,
    };

    public static Stand OtherRoom(string cabinet) => At(cabinet, 1) with { Room = new PlaceName("P2", "display room") };

    public static ShelfItem Item(string key, string content, Stand stand, bool sealedByFlame = false) =>
        new(key, content, Profiles.Of(content), stand, sealedByFlame);

    public static IReadOnlyList<Finding> Find(params ShelfItem[] items) => new NeighbourFinder().Find(items);
}
