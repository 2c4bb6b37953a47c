using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Holdings;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>What place rules share: their holdings by place, and how these are named.</summary>
internal static class PlaceWords
{
    /// <summary>Holdings that fulfil a condition, gathered by the place in which they stand.</summary>
    public static IEnumerable<(Place Place, IReadOnlyList<Holding> Holdings)> By(StockAssessment stock, Func<Holding, bool> condition) => stock.Holdings
        .Where(h => h.Path.Count > 0 && condition(h))
        .GroupBy(h => h.Path[^1].Id, StringComparer.Ordinal)
        .OrderBy(g => g.Key, StringComparer.Ordinal)
        .Select(g => (g.First().Path[^1], (IReadOnlyList<Holding>)[.. g]));

    /// <summary>Their contents as the start of a sentence, with the right one of two verbs: "Acetone and ethanol stand".</summary>
    public static string Subject(IReadOnlyList<Holding> holdings, string one, string several)
    {
        List<string> names = [.. holdings.Select(h => h.Content.Name).Distinct(StringComparer.Ordinal)];
        return $"{FindingSentence.Start(FindingSentence.Listed(names))} {(names.Count == 1 ? one : several)}";
    }

    public static PlaceFinding Finding(string rule, string cause, string would, string source, Severity severity, Place place, IReadOnlyList<Holding> holdings) =>
        new(rule, cause, [would], source, severity, place.Id, [.. holdings.Select(h => h.Id)]);

    public static Place? Cabinet(this Holding holding) => holding.Path.FirstOrDefault(p => p.Level == PlaceLevel.Cabinet);

    public static bool HasCategory(this Holding holding, params ReadOnlySpan<string> categories)
    {
        foreach (var category in categories)
        {
            if (holding.Classification.Has(category))
                return true;
        }

        return false;
    }

    /// <summary>True for what stands in a tray or other place that holds what leaks, or in outer packing that does.</summary>
    public static bool IsHeldIfItLeaks(this Holding holding) => holding.Stand.IsInOwnPacking || holding.Path.Any(p => p.Limits.LeakTight == true);
}
