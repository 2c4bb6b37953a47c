using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// The part that makes a preparation what it is called: the one whose least strength is published, else the one that decomposes, else the
/// first that is not water, which is the one a preparation is named for.
/// </summary>
internal static class DecidingPart
{
    // Potassium and uranium are radioactive, and lose nothing by it that anybody could find within a century.
    private const double Found = 1e-3;
    private static readonly Span Century = Span.FromYears(100);

    /// <summary>Index among the parts; null for a pure substance that does not decompose, a solid, a gas, and what turns into something else by radioactive decay.</summary>
    public static int? Of(Content content, PropertyFacts facts)
    {
        var parts = content.Parts;
        if (facts.LeastStrength(content) is { } published && IndexOf(parts, p => ReferenceEquals(p.Substance, published.Substance)) is { } listed)
            return listed;
        if (IndexOf(parts, p => facts.Decomposition(p.Substance) is not null && p.Substance.MolarMass is not null) is { } decomposing)
            return decomposing;
        return parts.Count > 1 && content.State == MatterState.Liquid && IndexOf(parts, p => p.Substance.Name != "water") is { } first && !TurnsIntoSomethingElse(parts[first].Substance, facts)
            ? first
            : null;
    }

    private static bool TurnsIntoSomethingElse(Substance substance, PropertyFacts facts) =>
        facts.Nuclides(substance).Sum(n => n.MassShare.Value * n.Nuclide.DecayConstant.PerSecond * Century.Seconds) > Found;

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
