using System.Globalization;
using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Holdings;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>What the keeper has set as the most that a place may hold.</summary>
internal sealed class KeepersLimits : IPlaceRule
{
    private const string Source = "the keeper's own limit of the place";

    public IEnumerable<PlaceFinding> Find(StockAssessment stock)
    {
        foreach (var place in stock.State.Places.Values.Where(HasLimit).OrderBy(p => p.Id, StringComparer.Ordinal))
        {
            var all = HeldAmounts.In(place, stock);
            if (place.Limits.MaxContainers is { } most && all.Count > most)
                yield return Over(place, all, $"{all.Count} containers, more than the {most} it may", "structural failure");
            if (place.Limits.MaxLoadKilograms is { } load && all.Sum(HeldAmounts.Kilograms) is var mass && mass > load)
                yield return Over(place, all, $"at least {Number(mass)} kg, more than the {Number(load)} kg it may", "structural failure");
            if (place.Limits.MaxLitres is { } litres && Sum(all, stock) is var volume && volume > litres)
                yield return Over(place, Liquids(all, stock), $"at least {Number(volume)} L of liquid, more than the {Number(litres)} L it may", "corrosion");
            List<Holding> flammable = [.. all.Where(HeldAmounts.IsFlammableLiquid)];
            if (place.Limits.MaxFlammableLitres is { } burning && Sum(flammable, stock) is var burns && burns > burning)
                yield return Over(place, flammable, $"at least {Number(burns)} L of flammable liquid, more than the {Number(burning)} L it may", "fire");
        }
    }

    private static bool HasLimit(Place place) =>
        place.Limits is not { MaxContainers: null, MaxLoadKilograms: null, MaxLitres: null, MaxFlammableLitres: null };

    private static decimal Sum(IReadOnlyList<Holding> holdings, StockAssessment stock) => holdings.Sum(h => HeldAmounts.Litres(h, stock) ?? 0m);

    private static List<Holding> Liquids(IReadOnlyList<Holding> holdings, StockAssessment stock) => [.. holdings.Where(h => HeldAmounts.Litres(h, stock) is not null)];

    private static PlaceFinding Over(Place place, IReadOnlyList<Holding> holdings, string what, string would) => PlaceWords.Finding(
        "more than the place may hold", $"{FindingSentence.Start(place.Name)} holds {what}. Move something elsewhere.", would, Source, Severity.Warning, place, holdings);

    private static string Number(decimal value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
