using Stockroom.Assessment.Arrangement.Search;

namespace Stockroom.Assessment.Arrangement.Words;

/// <summary>Limits in words.</summary>
internal static class LimitWords
{
    /// <summary>The first limit that is passed at a spot as things stand now; null where all are kept.</summary>
    public static string? Passed(Layout layout, int spot)
    {
        foreach (var c in layout.Limits.At(spot))
        {
            if (layout.Limits.AtHome[c] > layout.Limits.Most[c])
                return Sentence(layout.Shelving.Limits[c], layout.Limits.AtHome[c]);
        }

        return null;
    }

    /// <summary>The first limit that one thing more would pass; null where it would fit.</summary>
    public static string? WouldPass(Layout layout, int thing, int spot, IReadOnlyList<int> where)
    {
        foreach (var c in layout.Limits.At(spot))
        {
            var use = layout.Limits.Use(c, thing);
            var carried = Enumerable.Range(0, layout.Things).Where(j => j != thing && layout.Limits.Covers(c, where[j])).Sum(j => layout.Limits.Use(c, j));
            if (use > 0 && carried + use > layout.Limits.Most[c])
                return $"{layout.Shelving.Limits[c].PlaceName} can take {Amount(layout.Shelving.Limits[c].Measure, layout.Limits.Most[c])} and holds {Amount(layout.Shelving.Limits[c].Measure, carried)}";
        }

        return null;
    }

    public static string Amount(Measure measure, long amount) => measure switch
    {
        Measure.Containers => $"{amount} container{(amount == 1 ? "" : "s")}",
        Measure.Milligrams => $"{amount / 1_000_000m:0.###} kg",
        Measure.Microlitres => $"{amount / 1_000_000m:0.###} L",
        _ => $"{amount / 1_000_000m:0.###} L of flammable liquid",
    };

    private static string Sentence(SpotLimit limit, long carried) =>
        $"{Lists.Start(limit.PlaceName)} can take {Amount(limit.Measure, limit.Most)} and holds {Amount(limit.Measure, carried)}.";
}
