using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Vessels;

/// <summary>How one material stands one content; a null rating is unknown, with the reason.</summary>
public sealed record ResistanceFinding(string Material, string Content, ResistanceRating? Rating, string Because, Provenance? Source);

/// <summary>One wetted part of a vessel and how it stands what it holds.</summary>
/// <remarks>Part: body, liner, stopper or grease. By: the content itself or its cover.</remarks>
public sealed record WettedPart(string Part, string By, ResistanceFinding Finding);

/// <summary>
/// Material resistance of a content against the parts that it wets. A solution is judged by the nearest listed strength, a mixture
/// by its worst part; glass of every kind by borosilicate, fluoropolymers by PFA where they are not rated themselves.
/// </summary>
public static class VesselFit
{
    private static readonly Dictionary<string, string> JudgedAs = new(StringComparer.Ordinal)
    {
        ["soda-lime glass"] = "borosilicate glass",
        ["fused silica"] = "borosilicate glass",
        ["FEP"] = "PFA",
        ["steel"] = "carbon steel",
        ["butyl rubber"] = "EPDM",
    };

    /// <summary>A trace below this share does not judge a vessel.</summary>
    private const decimal TracePercent = 0.1m;

    /// <summary>Strengths this near to each other are the same to a material.</summary>
    private const double SameStrengthPercent = 5;

    /// <summary>Every wetted part against content and cover, worst first.</summary>
    public static IReadOnlyList<WettedPart> Of(Situation situation, PropertyFacts facts)
    {
        var parts = new List<(string Part, string Material)> { ("body", situation.Vessel.Material) };
        foreach (var material in situation.Closure.Wetted.Where(m => m != situation.Vessel.Material))
            parts.Add((material == situation.Closure.Liner ? "liner" : material == "joint grease" ? "grease" : "stopper", material));
        var contents = new List<Content> { situation.Content };
        if (situation.Cover is { Kind: CoverKind.Liquid, Content: { } cover } && facts.Catalogue.Resolve(cover).Content is { } over)
            contents.Add(over);
        var found = parts
            .SelectMany(p => contents.Select((c, i) => new WettedPart(p.Part, i == 0 ? "content" : "cover", Resists(p.Material, c, facts))));
        return [.. found.Concat(SeizingJoint(situation)).OrderBy(w => w.Finding.Rating is { } r ? (int)r : 3)];
    }

    // Alkali creeps into a ground joint and cements it, whatever the glass itself stands.
    private static IEnumerable<WettedPart> SeizingJoint(Situation situation)
    {
        var alkali = situation.Content.Parts.FirstOrDefault(p => p.Percent >= 1 && (p.Substance.Name is "sodium hydroxide" or "potassium hydroxide"));
        if (alkali is not null && situation.Closure.Name.StartsWith("ground-glass", StringComparison.Ordinal))
        {
            yield return new WettedPart("stopper", "content", new ResistanceFinding(
                "ground joint", situation.Content.Name, ResistanceRating.Limited, $"{alkali.Substance.Name} etches a ground joint and seizes it", new Provenance("common practice", "-", "2026")));
        }
    }

    /// <summary>Whether a material stands a content.</summary>
    public static ResistanceFinding Resists(string material, Content content, PropertyFacts facts)
    {
        if (content.IsUnknown)
            return new ResistanceFinding(material, content.Name, null, "what the content is, is not known; no material can be called safe", null);
        material = MaterialNames.Of(material, [.. facts.RatedMaterials, .. JudgedAs.Keys]);
        var judged = facts.RatedMaterials.Contains(material, StringComparer.Ordinal) ? material : JudgedAs.GetValueOrDefault(material);
        if (judged is null)
            return new ResistanceFinding(material, content.Name, null, Unrated(material, facts), null);
        var found = content.Parts.Where(p => p.Percent >= TracePercent || content.Parts.Count == 1)
            .Select(p => Nearest(p, content, judged, facts)).OfType<MaterialResistance>().ToList();
        if (found.Count == 0)
            return new ResistanceFinding(material, content.Name, null, $"{content.Name} on {material} is not in the resistance table", null);
        var worst = found.MinBy(f => (int)f.Rating)!;
        if (worst.Rating != ResistanceRating.Poor && Unlisted(content, judged, facts) is { } unlisted)
            return new ResistanceFinding(material, content.Name, null, $"{unlisted} on {material} is not in the resistance table; the rest of it is {Word(worst.Rating)}", null);
        return new ResistanceFinding(material, content.Name, worst.Rating, Because(worst, content, material, judged), worst.Provenance);
    }

    // Of a solution, the listed strength nearest to its own; between two listed ones the worse, as steel stands sulfuric acid when
    // strong and not when weak. A substance listed only as such also stands for its mixtures.
    private static MaterialResistance? Nearest(Part part, Content content, string material, PropertyFacts facts)
    {
        var rows = facts.Resistances(part.Substance, material);
        if (rows.Count == 0 || (part.Substance.Name == "water" && content.Parts.Count > 1))
            return null;
        double Off(MaterialResistance r) => (r.Strength?.Percent ?? 100) - (double)part.Percent;
        var nearest = rows.MinBy(r => Math.Abs(Off(r)))!;
        var other = rows.Where(r => Off(r) * Off(nearest) < 0).MinBy(r => Math.Abs(Off(r)));
        return Math.Abs(Off(nearest)) <= SameStrengthPercent || other is null || other.Rating >= nearest.Rating ? nearest : other;
    }

    // A liquid or dissolved part that is a good share of the content and stands nowhere in the table leaves the answer open.
    private static string? Unlisted(Content content, string material, PropertyFacts facts) =>
        content.Parts.FirstOrDefault(p => p.Percent >= 5 && p.Substance.Name != "water" && facts.Resistances(p.Substance, material).Count == 0)?.Substance.Name;

    private static string Because(MaterialResistance row, Content content, string material, string judged)
    {
        var strength = row.Strength is { } s
            ? $", by the listed strength of {s.Percent:0.#} %{(content.PercentOf(row.Substance.Name) == (decimal)s.Percent ? "" : $" (it has {content.PercentOf(row.Substance.Name):0.#} %)")}"
            : content.Parts.Count > 1 ? ", by the substance itself" : "";
        var stand = judged == material ? "" : $", rated as {judged}";
        return $"{row.Substance.Name} on {material}: {row.Remark}{strength}{stand}";
    }

    private static string Unrated(string material, PropertyFacts facts)
    {
        var nearest = MaterialNames.Nearest(material, facts.RatedMaterials);
        return $"{material} is not in the resistance table; {(nearest.Count > 0 ? "nearest: " + string.Join(", ", nearest) : "it rates " + string.Join(", ", facts.RatedMaterials))}";
    }

    /// <summary>Materials of the table that stand a content well, in the order of the table.</summary>
    public static IReadOnlyList<string> WouldDo(Content content, PropertyFacts facts) =>
        [.. facts.RatedMaterials.Where(m => Resists(m, content, facts).Rating == ResistanceRating.Good)];

    /// <summary>The word for a rating.</summary>
    public static string Word(ResistanceRating rating) => rating switch
    {
        ResistanceRating.Good => "good",
        ResistanceRating.Limited => "limited",
        _ => "poor",
    };
}
