using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Losses;
using Stockroom.Assessment.Neighbours;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Vessels;

/// <summary>One question about a cover before it is poured, and its answer.</summary>
/// <remarks>Good: null where it is not known.</remarks>
public sealed record CoverPoint(string Question, bool? Good, string Because, Provenance? Source);

/// <summary>
/// Whether a liquid can lie over a content: it floats, does not mix, does not react, stands high enough, fits the vessel and stays
/// liquid. What is not known is not called good.
/// </summary>
public sealed record CoverFit(string Cover, IReadOnlyList<CoverPoint> Points)
{
    private const double Afloat = 1.02;
    private const double FullestPercent = 95;

    private static readonly Provenance Practice = new("common practice", "-", "2026");

    /// <summary>False as soon as one answer is; null where one is not known and none is bad.</summary>
    public bool? Holds => Points.Any(p => p.Good == false) ? false : Points.All(p => p.Good == true) ? true : null;

    /// <summary>Null where no liquid lies over the content, or it is not known what that is.</summary>
    /// <param name="situation">Content, vessel, cover and its depth.</param>
    /// <param name="facts">All facts: hazards, contacts and least depths are asked too.</param>
    /// <param name="coldest">The coldest of the place; null where it is not known.</param>
    public static CoverFit? Of(Situation situation, StockFacts facts, Temperature? coldest)
    {
        if (situation.Cover is not { Kind: CoverKind.Liquid, Content: { } name } cover || situation.Content.IsUnknown || facts.Catalogue.Resolve(name).Content is not { } over)
            return null;
        var (below, above) = (Profile(situation.Content, facts), Profile(over, facts));
        return new CoverFit(cover.Name,
        [
            Floats(situation, cover, over, facts.Properties),
            Mixes(situation, cover, below, facts.Properties),
            Reacts(situation, cover, below, above, facts),
            Deep(situation, cover, facts),
            Fits(situation, cover, facts.Properties),
            Liquid(situation, cover, coldest),
        ]);
    }

    private static ContactProfile Profile(Content content, StockFacts facts) =>
        ContactProfile.Of(content, Classifier.Classify(content, facts.Hazards, RuleSet.Eu).StatementCodes, facts.Contacts);

    private static CoverPoint Floats(Situation s, Cover cover, Content over, PropertyFacts facts)
    {
        if (DensityOf(s.Content, s.Temperature, facts) is not { } content || DensityOf(over, s.Temperature, facts) is not { } top)
            return new CoverPoint("floats", null, $"the density of {s.Content.Name} or {cover.Name} is not known", null);
        var words = $"{s.Content.Name} {content.GramsPerMillilitre:0.00} g/mL, {cover.Name} {top.GramsPerMillilitre:0.00}";
        if (content.KilogramsPerCubicMetre >= top.KilogramsPerCubicMetre * Afloat)
            return new CoverPoint("floats", true, $"{words}: the cover floats", Practice);
        return s.Content.State == MatterState.Solid
            ? new CoverPoint("floats", false, $"{words}: the content rises through the cover; hold it under, or take argon in a sealed vessel", Practice)
            : new CoverPoint("floats", false, $"{words}: the cover sinks below the content", Practice);
    }

    private static CoverPoint Mixes(Situation s, Cover cover, ContactProfile profile, PropertyFacts facts) => CoverMixing.Find(s.Content, cover, profile, facts) is { } row
        ? new CoverPoint("does not mix", !row.Mixes, $"{s.Content.Name} and {cover.Name}: {row.Because}", row.Source)
        : new CoverPoint("does not mix", null, $"whether {s.Content.Name} mixes with {cover.Name} is not in the tables: try a drop first", null);

    // A cover that practice names for a content is not judged by the rules for things that must not meet.
    private static CoverPoint Reacts(Situation s, Cover cover, ContactProfile below, ContactProfile above, StockFacts facts)
    {
        if (Named(s, cover, facts) is { } named)
            return new CoverPoint("does not react", true, $"{cover.Name} is what is laid over {named.Subject}", named.Provenance);
        var reason = new PairJudge().Judge(below, above).Reasons.FirstOrDefault(r => !r.ByAir && r.OnlyIf is null && r.Separation > Separation.SameTray);
        return reason is null
            ? new CoverPoint("does not react", true, $"no rule speaks against {s.Content.Name} under {cover.Name}", null)
            : new CoverPoint("does not react", false, $"{reason.Cause}; could bring {string.Join(", ", reason.Would)}{(reason.Product is { } p ? $" ({p})" : "")}", reason.Source);
    }

    private static CoverPoint Deep(Situation s, Cover cover, StockFacts facts)
    {
        if (s.CoverDepth is not { } depth)
            return new CoverPoint("keeps it below the surface", null, $"how deep the {cover.Name} is to be, is not said", null);
        if (Named(s, cover, facts) is not { } least)
            return new CoverPoint("keeps it below the surface", depth.Millimetres >= 5, $"{depth.Millimetres:0.#} mm over the content; at least 5 mm lets a lump lie under when the vessel is tilted", Practice);
        return new CoverPoint("keeps it below the surface", depth.Millimetres >= (double)least.MinimumMillimetres, $"{depth.Millimetres:0.#} mm where {least.MinimumMillimetres:0.#} mm are the least: {least.Because}", least.Provenance);
    }

    private static CoverPoint Fits(Situation s, Cover cover, PropertyFacts facts)
    {
        if (DensityOf(s.Content, s.Temperature, facts) is not { } density)
            return new CoverPoint("fits the vessel", null, $"the volume of {s.Content.Name} is not known", null);
        var volume = (s.Amount.Kilograms / density.KilogramsPerCubicMetre) + s.CoverVolume.CubicMetres;
        var percent = 100 * volume / s.Vessel.Volume.CubicMetres;
        return new CoverPoint("fits the vessel", percent <= FullestPercent, $"content and {cover.Name} fill {percent:0} % of the {s.Vessel.Name}", s.Vessel.Provenance);
    }

    private static CoverPoint Liquid(Situation s, Cover cover, Temperature? coldest)
    {
        if (cover.Stiff is not { } stiff)
            return new CoverPoint("stays liquid", null, $"where {cover.Name} freezes is not in the tables", null);
        var low = coldest ?? new Temperature(s.Temperature.Kelvin - (s.DailySwing.Kelvins / 2));
        var known = coldest is null ? "the coldest of the place is not known; by its mean it " : "the place ";
        return new CoverPoint("stays liquid", low > stiff, $"{known}goes down to {low.Celsius:0.#} degrees C, and {cover.Name} stiffens below {stiff.Celsius:0.#}", cover.Provenance);
    }

    private static Rounds.CoverMinimum? Named(Situation s, Cover cover, StockFacts facts) =>
        facts.Rounds.CoverMinimums.FirstOrDefault(c => c.Cover == cover.Name && (c.Subject == s.Content.Name || c.Subject == s.Content.Pure?.Name));

    private static Density? DensityOf(Content content, Temperature t, PropertyFacts facts) =>
        content.Pure is { } pure ? facts.Density(pure, t).Value : content.Density;
}
