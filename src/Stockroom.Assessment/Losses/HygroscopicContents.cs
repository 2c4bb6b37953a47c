using Stockroom.Chemistry.Properties;

namespace Stockroom.Assessment.Losses;

/// <summary>Contents and covers that take up water from the air of a room. Source: common practice.</summary>
internal static class HygroscopicContents
{
    private static readonly HashSet<string> Names = new(StringComparer.Ordinal)
    {
        "phosphorus pentoxide", "calcium chloride", "sodium hydroxide", "potassium hydroxide", "lithium chloride", "lithium bromide", "zinc chloride", "aluminium chloride",
        "iron(III) chloride", "magnesium perchlorate", "magnesium chloride hexahydrate", "glycerol", "phosphoric acid", "calcium oxide", "barium oxide", "potassium carbonate",
        "antimony trichloride", "tin tetrachloride",
    };

    /// <summary>The pure contents that do, by their names in the catalogue.</summary>
    internal static IReadOnlyCollection<string> Listed => Names;

    public static bool TakesUp(Situation situation) => Why(situation) is not null;

    /// <summary>What takes up water; null where nothing is known to.</summary>
    public static string? Why(Situation situation)
    {
        if (situation.Cover is { Kind: CoverKind.Liquid } cover && cover.Name.StartsWith("sulfuric acid", StringComparison.Ordinal))
            return "the acid cover";
        if (situation.Content.PercentOf("sulfuric acid") >= 60)
            return "strong sulfuric acid";
        return situation.Content.Pure is { } pure && Names.Contains(pure.Name) ? pure.Name : null;
    }
}
