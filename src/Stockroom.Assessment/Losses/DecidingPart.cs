using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// The part that makes a preparation what it is called: the one whose least strength is published, else the one that decomposes, else the
/// first that is not water, which is the one a preparation is named for.
/// </summary>
internal static class DecidingPart
{
    /// <summary>Index among the parts; null for a pure substance that does not decompose, a solid, a gas, and what turns into something else by radioactive decay.</summary>
    public static int? Of(Content content, PropertyFacts facts)
    {
        var parts = content.Parts;
        if (facts.LeastStrength(content) is { } published && IndexOf(parts, p => ReferenceEquals(p.Substance, published.Substance)) is { } listed)
            return listed;
        if (IndexOf(parts, p => facts.Decomposition(p.Substance) is not null && p.Substance.MolarMass is not null) is { } decomposing)
            return decomposing;
        return parts.Count > 1 && content.State == MatterState.Liquid && IndexOf(parts, p => p.Substance.Name != "water") is { } first && facts.Nuclides(parts[first].Substance).Count == 0
            ? first
            : null;
    }

    private static int? IndexOf(IReadOnlyList<Part> parts, Func<Part, bool> matches)
    {
        for (var i = 0; i < parts.Count; i++)
        {
            if (matches(parts[i]))
                return i;
        }

        return null;
    }
}
