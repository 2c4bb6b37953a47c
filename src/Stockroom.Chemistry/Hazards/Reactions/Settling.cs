using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Chemistry.Hazards.Reactions;

/// <summary>
/// What is left of a recipe in water once the reactions that are computed have run; what else would react is said and
/// not judged.
/// </summary>
internal static class Settling
{
    // Heat capacity of water, kilojoules for 100 g and one kelvin.
    private const decimal WarmingOfWater = 0.418m;
    private const decimal Violent = 30m;

    /// <summary>The content after the reaction with notes that say so; the content itself where nothing reacts.</summary>
    public static Content Settle(Content content, HazardFacts facts)
    {
        if (content.State != MatterState.Liquid || content.Parts.Count < 2 || content.WaterPercent == 0 || content.Parts.Any(p => p.Substance.MolarMass is null))
            return content;
        var vessel = new Vessel(content, facts.Catalogue);
        foreach (var reaction in ReactionList.All)
            reaction.Run(vessel, facts.Ions);
        if (vessel.Computed.Count == 0)
            return content;
        var left = vessel.Left();
        return content with { Parts = left, Notes = [.. content.Notes, .. vessel.Notes, .. Said(content, vessel, left, facts)] };
    }

    private static IEnumerable<string> Said(Content content, Vessel vessel, List<Part> left, HazardFacts facts)
    {
        yield return $"classified is what is left: {string.Join("; ", left.OrderBy(p => p.Substance.Name == "water").Select(p => $"{p.Substance.Name} {Explain.Percent(p.Percent)}"))}";
        var kelvin = vessel.Kilojoules / WarmingOfWater;
        if (kelvin >= 1m)
        {
            yield return $"neutralisation gives off about {Explain.Number(Math.Round(vessel.Kilojoules, 1))} kJ for 100 g, enough to warm it by about {Explain.Number(Math.Round(kelvin, 0))} degrees Celsius"
                + (kelvin >= Violent ? "; it would spit or boil if mixed at once" : "");
        }

        var names = left.Select(p => p.Substance.Name).ToHashSet(StringComparer.Ordinal);
        foreach (var (a, b, sentence) in facts.Reactions.PairsAmong([.. content.Parts.Select(p => p.Substance.Name).Distinct()]))
        {
            if (!vessel.Computed.Contains((a, b)) && !vessel.Computed.Contains((b, a)) && !(names.Contains(a) && names.Contains(b)))
                yield return sentence;
        }
    }
}
