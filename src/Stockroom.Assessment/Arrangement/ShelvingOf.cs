using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Neighbours.Standing;
using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Book.Places;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Assessment.Arrangement;

/// <summary>The shelving of a stock book: its containers, places and limits.</summary>
public static class ShelvingOf
{
    private const decimal Millionths = 1_000_000m;

    public static Shelving Stock(StockAssessment stock)
    {
        var bans = BansOf.Stock(stock, stock.Holdings);
        return new([.. stock.Holdings.Select(h => Thing(h, stock, bans[h.Id]))], Spots(stock.State), [.. Limits(stock.State)]);
    }

    /// <summary>Something that is not in the book yet, as a thing without a place; its key is the next free id.</summary>
    public static Thing NotYetBooked(StockAssessment stock, Content content)
    {
        var container = new Container
        {
            Id = stock.State.NewId(),
            ContentName = content.Name,
            IsOrphan = content.IsUnknown,
            State = content.State,
            PlaceId = "",
            Lot = new Lot { How = LotOrigin.Bought },
            ReceivedOn = stock.Today,
        };
        var holding = stock.Judge(container);
        return Thing(holding, stock, BansOf.Stock(stock, [holding])[holding.Id]);
    }

    private static Thing Thing(Holding holding, StockAssessment stock, IReadOnlyDictionary<string, Ban> bans) => new(holding.Id.ToString(), holding.Content.Name, holding.Profile)
    {
        Spot = stock.State.Places.ContainsKey(holding.Container.PlaceId) ? holding.Container.PlaceId : null,
        IsFlameSealed = holding.IsFlameSealed,
        IsInOwnPacking = holding.Stand.IsInOwnPacking,
        Pinned = holding.Container.Pinned,
        HandsOff = holding.Container.HandsOff,
        Burden = BurdenOf.Holding(holding, stock),
        Bans = bans,
    };

    private static List<Spot> Spots(BookState state) =>
        [.. state.Places.Values
            .OrderBy(p => string.Join('\u0001', state.PathTo(p.Id).Select(x => $"{x.Limits.Position ?? int.MaxValue:D10}{x.Id}")), StringComparer.Ordinal)
            .Select(p => Spot(p, state))];

    private static Spot Spot(Place place, BookState state)
    {
        var path = state.PathTo(place.Id);
        var kind = path.FirstOrDefault(p => p.Level == PlaceLevel.Cabinet)?.Kind;
        return new Spot(place.Id, place.Name, string.Join(" > ", path.Select(p => p.Name)), StandOf.Place(place.Id, state))
        {
            Kind = kind,
            HeightMetres = state.LimitsAt(place.Id).HeightMetres,
            IsOffered = place.Level != PlaceLevel.Room && !(place.Level == PlaceLevel.Cabinet && state.PlacesInside(place.Id).Any()),
            Within = [.. path.Select(p => p.Id), .. kind == PlaceKind.FireCabinet ? Array.Empty<string>() : [OutsideOf(path[0])]],
        };
    }

    // A room without its fire cabinets, which has a limit of its own.
    private static string OutsideOf(Place room) => $"{room.Id} outside fire cabinets";

    private static IEnumerable<SpotLimit> Limits(BookState state)
    {
        foreach (var place in state.Places.Values.OrderBy(p => p.Id, StringComparer.Ordinal))
        {
            if (place.Limits.MaxContainers is { } count)
                yield return new SpotLimit(place.Id, place.Name, Measure.Containers, count);
            if (place.Limits.MaxLoadKilograms is { } load)
                yield return new SpotLimit(place.Id, place.Name, Measure.Milligrams, (long)(load * Millionths));
            if (place.Limits.MaxLitres is { } litres)
                yield return new SpotLimit(place.Id, place.Name, Measure.Microlitres, (long)(litres * Millionths));
            if (place.Limits.MaxFlammableLitres is { } burning)
                yield return new SpotLimit(place.Id, place.Name, Measure.FlammableMicrolitres, (long)(burning * Millionths));
            else if (place.Level == PlaceLevel.Cabinet && place.Kind != PlaceKind.OpenShelf)
                yield return new SpotLimit(place.Id, place.Name, Measure.FlammableMicrolitres, (long)(FlammableVolume.CabinetLitres * Millionths)) { IsCustomary = true };
            else if (place.Level == PlaceLevel.Room)
                yield return new SpotLimit(OutsideOf(place), $"{place.Name} outside fire cabinets", Measure.FlammableMicrolitres, (long)(FlammableVolume.RoomLitres * Millionths)) { IsCustomary = true };
        }
    }
}
