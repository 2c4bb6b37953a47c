using System.Globalization;
using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Holdings;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>
/// How much flammable liquid a cabinet may hold, and a room outside fire cabinets, where the keeper has set no limit. Sources: 29 CFR
/// 1910.106(d)(3)(i), read; 10 gallons in a laboratory by the practice of universities, read. Local codes come first.
/// </summary>
internal sealed class FlammableVolume : IPlaceRule
{
    private const decimal LitresPerGallon = 3.785411784m;
    internal const decimal CabinetLitres = 60m * LitresPerGallon;
    internal const decimal RoomLitres = 10m * LitresPerGallon;

    public IEnumerable<PlaceFinding> Find(StockAssessment stock)
    {
        foreach (var place in stock.State.Places.Values.Where(p => p.Level == PlaceLevel.Cabinet && p.Kind != PlaceKind.OpenShelf && p.Limits.MaxFlammableLitres is null).OrderBy(p => p.Id, StringComparer.Ordinal))
        {
            if (Over(place, h => true, CabinetLitres, stock) is var (litres, holdings))
                yield return Finding(place, holdings, $"{FindingSentence.Start(place.Name)} holds at least {Number(litres)} L of flammable liquid; a cabinet may hold {Number(CabinetLitres)} L (60 US gallons). Spread it over more cabinets, and ask what your fire code allows.", "29 CFR 1910.106(d)(3)(i); local codes come first");
        }

        foreach (var room in stock.State.Places.Values.Where(p => p.Level == PlaceLevel.Room && p.Limits.MaxFlammableLitres is null).OrderBy(p => p.Id, StringComparer.Ordinal))
        {
            if (Over(room, h => h.Cabinet()?.Kind != PlaceKind.FireCabinet, RoomLitres, stock) is var (litres, holdings))
                yield return Finding(room, holdings, $"At least {Number(litres)} L of flammable liquid stand in {room.Name} outside a fire cabinet; beyond {Number(RoomLitres)} L (10 US gallons) they belong in one. Ask what your fire code allows.", "common practice of university laboratories; local codes come first");
        }
    }

    private static (decimal Litres, IReadOnlyList<Holding> Holdings)? Over(Place place, Func<Holding, bool> counts, decimal most, StockAssessment stock)
    {
        List<Holding> flammable = [.. HeldAmounts.In(place, stock).Where(h => counts(h) && HeldAmounts.IsFlammableLiquid(h))];
        var litres = flammable.Sum(h => HeldAmounts.Litres(h, stock) ?? 0m);
        return litres > most ? (litres, flammable) : null;
    }

    private static PlaceFinding Finding(Place place, IReadOnlyList<Holding> holdings, string cause, string source) =>
        PlaceWords.Finding("too much flammable liquid in one place", cause, "fire", source, Severity.Warning, place, holdings);

    private static string Number(decimal value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
