using Stockroom.Assessment.Losses;
using Stockroom.Book.Places;
using Stockroom.Chemistry.Properties;

namespace Stockroom.Assessment.Holdings;

/// <summary>The air about a holding: that of its cabinet, if it stands in one, within that of its room.</summary>
public static class AirOf
{
    /// <summary>The cabinet or open shelf it stands in; null for what stands in no such place.</summary>
    public static Place? Cabinet(Holding holding) => holding.Path.FirstOrDefault(p => p.Level == PlaceLevel.Cabinet);

    /// <summary>The same situation with the air of its place, as usually met with places of that kind.</summary>
    public static Situation With(Situation situation, Place? cabinet) => cabinet is not null && AirSpaces.Of(cabinet.Kind.Word) is { } closed
        ? situation with { Air = closed.Space, RoomAir = AirSpaces.Room.Space }
        : situation with { Air = AirSpaces.Room.Space, RoomAir = null };

    /// <summary>What a holding gives to the air where it stands; null where nothing does, or nothing can be forecast.</summary>
    public static AirForecast? Of(Holding holding, PropertyFacts facts) => holding.Situation is { } situation
        ? AirForecasts.Of(With(situation, Cabinet(holding)), facts, holding.Forecast?.LossRate ?? default, holding.Forecast?.On ?? situation.AmountOn)
        : null;

    /// <summary>Everything in each cabinet or on each set of open shelves together.</summary>
    public static IReadOnlyList<(Place Cabinet, CabinetAir Air)> Cabinets(StockAssessment stock) =>
        [.. stock.Holdings
            .Select(h => (Holding: h, Cabinet: Cabinet(h), Air: Of(h, stock.Facts.Properties)))
            .Where(x => x.Cabinet is not null && x.Air is not null)
            .GroupBy(x => x.Cabinet!.Id, StringComparer.Ordinal)
            .Select(g => (g.First().Cabinet!, new CabinetAir([.. g.Select(x => (x.Holding.Id.ToString(), x.Air!))])))];
}
