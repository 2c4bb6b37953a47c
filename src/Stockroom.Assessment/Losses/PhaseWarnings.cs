using Stockroom.Assessment.Neighbours.Standing;
using Stockroom.Book.Places;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>A content has a floor and a ceiling: what freezes, melts or boils within reach of its place, and what daylight spoils.</summary>
internal static class PhaseWarnings
{
    // Common practice: these grow on freezing and break a full vessel.
    private static readonly HashSet<string> Grows = new(StringComparer.Ordinal) { "water", "gallium", "bismuth", "antimony", "silicon", "germanium" };

    public static IEnumerable<string> Of(Situation situation, PropertyFacts facts)
    {
        if (situation.Content.IsUnknown)
            yield break;
        var (coldest, warmest) = (Climate.Coldest(situation), Climate.Warmest(situation));
        foreach (var words in OfContent(situation.Content, situation.Temperature, coldest, warmest, facts))
            yield return words;
        if (situation.Cover is { Kind: CoverKind.Liquid, Content: { } name } cover && facts.Catalogue.Resolve(name).Content is { } liquid && Freezing(liquid, facts) is { } e && coldest <= e.At)
            yield return $"the {cover.Name} cover {e.Does} at {C(e.At)}, and the place goes down to {C(coldest)}: it then covers badly{(Grown(liquid) ? " and may break the vessel" : "")} ({e.Provenance})";
        if (situation.Light == PlaceLight.Window && LightSensitivity.Default.Of(situation.Content) is { } spoiled)
            yield return $"in daylight {spoiled.Effect}: keep it in brown glass or in the dark ({spoiled.Source})";
    }

    private static IEnumerable<string> OfContent(Content content, Temperature mean, Temperature coldest, Temperature warmest, PropertyFacts facts)
    {
        if (content.Pure is { } pure)
        {
            if (facts.MeltingPoint(pure) is { Value: { } melts, Provenance: { } source })
            {
                if (melts > mean && melts <= warmest)
                    yield return $"{pure.Name} melts at {C(melts)}, and the place reaches {C(warmest)}: it can run, or spread when it sets again ({source})";
                if (melts <= mean && melts >= coldest)
                    yield return $"{pure.Name} freezes at {C(melts)}, and the place goes down to {C(coldest)}{(Grown(content) ? ": it grows on freezing and may break a full vessel" : "")} ({source})";
            }

            if (facts.BoilingPoint(pure) is { Value: { } boils, Provenance: { } from } && boils > mean && boils <= warmest)
                yield return $"{pure.Name} boils at {C(boils)}, and the place reaches {C(warmest)}: its vapour then drives the closure off ({from})";
            yield break;
        }

        if (Freezing(content, facts) is { } e && coldest <= e.At)
            yield return $"{content.Name} {e.Does} at about {C(e.At)}, and the place goes down to {C(coldest)} ({e.Provenance})";
    }

    private static CoolingEvent? Freezing(Content content, PropertyFacts facts) => content.Pure is { } pure
        ? facts.MeltingPoint(pure) is { Value: { } melts, Provenance: { } source } ? new CoolingEvent("freezes", melts, default, source) : null
        : facts.Freezing(content);

    private static bool Grown(Content content) => content.Parts.Any(p => Grows.Contains(p.Substance.Name) && p.Percent > 80);

    private static string C(Temperature t) => $"{t.Celsius:0.#} degrees C";
}
