using Stockroom.Assessment.Neighbours;
using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Holdings;

/// <summary>Where a place stands, as the neighbour rules need it: room, cabinet, shelf, tray.</summary>
internal static class StandOf
{
    // A cabinet counts as ventilated from this many changes of air in an hour on. From memory: EN 14470-1, safety cabinets.
    private const decimal VentilatedFromAirChanges = 10m;

    private static readonly string[] HoldsWhatLeaks = ["absorbent", "absorber", "vermiculite"];

    /// <summary>Where a container stands, its outer packing counted.</summary>
    public static Stand Container(Container container, BookState state) => Place(container.PlaceId, state) with
    {
        IsInOwnPacking = container.Packing is { } packing && HoldsWhatLeaks.Any(w => packing.Contains(w, StringComparison.OrdinalIgnoreCase)),
    };

    public static Stand Place(string placeId, BookState state)
    {
        var path = state.PathTo(placeId);
        var cabinet = path.FirstOrDefault(p => p.Level == PlaceLevel.Cabinet);
        var shelf = path.FirstOrDefault(p => p.Level == PlaceLevel.Shelf);
        var tray = path.FirstOrDefault(p => p.Level == PlaceLevel.Tray);
        return new Stand
        {
            Room = Named(path.FirstOrDefault(p => p.Level == PlaceLevel.Room)),
            Cabinet = Named(cabinet),
            Shelf = Named(shelf),
            Tray = Named(tray),
            CabinetOrder = cabinet?.Limits.Position,
            ShelfOrder = shelf is null ? null : OrderFromTheFloor(shelf, state),
            TrayIsLeakTight = tray?.Limits.LeakTight ?? false,
            CabinetIsVentilated = cabinet is not null
                && (cabinet.Limits.AirChangesPerHour is { } changes ? changes >= VentilatedFromAirChanges : cabinet.Kind == PlaceKind.VentilatedCabinet),
        };
    }

    private static PlaceName? Named(Place? place) => place is null ? null : new PlaceName(place.Id, place.Name);

    // By height where both are known; a shelf whose height nobody said has no order.
    private static int? OrderFromTheFloor(Place shelf, BookState state)
    {
        if (shelf.Limits.HeightMetres is not { } height)
            return null;
        return state.PlacesInside(shelf.Inside).Count(p => p.Level == PlaceLevel.Shelf && p.Limits.HeightMetres < height);
    }
}
