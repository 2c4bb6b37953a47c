using Stockroom.Assessment.Holdings;
using Stockroom.Book;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Arrangement;

/// <summary>The shelving of a stock book: its containers, places and limits.</summary>
public static class ShelvingOf
{
    public static Shelving Stock(StockAssessment stock) =>
        new([.. stock.Holdings.Select(h => Thing(h, stock))], Spots(stock.State), [.. stock.State.Places.Values.OrderBy(p => p.Id, StringComparer.Ordinal).SelectMany(Limits)]);

    private static Thing Thing(Holding holding, StockAssessment stock) => new(holding.Id.ToString(), holding.Content.Name, holding.Profile)
    {
        Spot = stock.State.Places.ContainsKey(holding.Container.PlaceId) ? holding.Container.PlaceId : null,
        IsFlameSealed = holding.IsFlameSealed,
        Pinned = holding.Container.Pinned,
        HandsOff = holding.Container.HandsOff,
        Burden = BurdenOf.Holding(holding, stock.Facts.Wares),
    };

    private static List<Spot> Spots(BookState state) =>
        [.. state.Places.Values
            .OrderBy(p => string.Join('\u0001', state.PathTo(p.Id).Select(x => $"{x.Limits.Position ?? int.MaxValue:D10}{x.Id}")), StringComparer.Ordinal)
            .Select(p => Spot(p, state))];

    private static Spot Spot(Place place, BookState state)
    {
        var path = state.PathTo(place.Id);
        return new Spot(place.Id, place.Name, string.Join(" > ", path.Select(p => p.Name)), StandOf.Place(place.Id, state))
        {
            Kind = path.FirstOrDefault(p => p.Level == PlaceLevel.Cabinet)?.Kind,
            HeightMetres = state.LimitsAt(place.Id).HeightMetres,
            IsOffered = place.Level != PlaceLevel.Room && !(place.Level == PlaceLevel.Cabinet && state.PlacesInside(place.Id).Any()),
            Within = [.. path.Select(p => p.Id)],
        };
    }

    private static IEnumerable<SpotLimit> Limits(Place place)
    {
        if (place.Limits.MaxContainers is { } count)
            yield return new SpotLimit(place.Id, place.Name, Measure.Containers, count);
        if (place.Limits.MaxLoadKilograms is { } load)
            yield return new SpotLimit(place.Id, place.Name, Measure.Grams, (long)(load * 1000m));
    }
}
