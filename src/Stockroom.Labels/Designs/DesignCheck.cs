using Stockroom.Labels.Files;
using Stockroom.Labels.Layout;

namespace Stockroom.Labels.Designs;

/// <summary>Finds what a design file says against itself or against what any label needs.</summary>
internal static class DesignCheck
{
    private static readonly LabelPart[] HeadParts = [LabelPart.Name, LabelPart.Formula, LabelPart.Warnings];

    /// <summary>In the order in which they are set, which the standard's examples follow.</summary>
    private static readonly LabelPart[] HazardParts =
        [LabelPart.Pictograms, LabelPart.SignalWord, LabelPart.HazardStatements, LabelPart.PrecautionaryStatements];

    public static void Check(Design design, StrictMembers members)
    {
        if (design.Shapes.Count == 0)
        {
            throw members.Wrong("shapes", "is empty; name at least one shape of stock");
        }

        Places(design, members);
        Ranks(design, members);
        Type(design, members);
        var codes = design.Layout == DesignLayout.Full ? [CodePlace.TopRight] : new[] { CodePlace.Right, CodePlace.Bottom };
        if (design.CodeAt.Count == 0 || design.CodeAt.Any(c => !codes.Contains(c)))
        {
            throw members.Wrong("code_at", design.Layout == DesignLayout.Full
                ? "in the layout full the code stands at [\"top right\"]"
                : "in the layout mark the code stands at \"right\", \"bottom\" or either: [\"right\", \"bottom\"]");
        }
    }

    private static void Places(Design design, StrictMembers members)
    {
        Only("head", design.Head, HeadParts.Contains, HeadParts);
        Only("hazards", design.Hazards, HazardParts.Contains, HazardParts);
        Only("foot", design.Foot, p => LabelParts.IsDetail(p) || p == LabelPart.SmallPrint, [.. Enum.GetValues<LabelPart>().Where(LabelParts.IsDetail), LabelPart.SmallPrint]);
        if (!design.Head.Contains(LabelPart.Name))
        {
            throw members.Wrong("head", "lacks 'name': a label says what is inside");
        }

        if (!design.Hazards.SequenceEqual(HazardParts.Where(design.Hazards.Contains)))
        {
            throw members.Wrong("hazards", $"keep the order {string.Join(", ", HazardParts.Select(LabelParts.WordOf))}");
        }

        void Only(string member, IReadOnlyList<LabelPart> parts, Func<LabelPart, bool> allowed, IEnumerable<LabelPart> all)
        {
            foreach (var part in parts.Where(p => !allowed(p)))
            {
                throw members.Wrong(member, $"'{LabelParts.WordOf(part)}' does not stand there; what may is {string.Join(", ", all.Select(LabelParts.WordOf))}");
            }
        }
    }

    /// <summary>What has a place has a rank, and what has a rank has a place.</summary>
    private static void Ranks(Design design, StrictMembers members)
    {
        List<LabelPart> placed = [LabelPart.Id, LabelPart.Code, LabelPart.RestOfName, .. design.Head, .. design.Hazards, .. design.Foot];
        foreach (var part in placed)
        {
            var times = design.Always.Count(p => p == part) + design.Priority.Count(p => p == part);
            if (times != 1)
            {
                throw members.Wrong("priority", $"'{LabelParts.WordOf(part)}' stands {(times == 0 ? "neither in always nor in priority" : "in both always and priority")}; it belongs into one of them");
            }
        }

        foreach (var part in design.Always.Concat(design.Priority).Where(p => !placed.Contains(p)))
        {
            throw members.Wrong("priority", $"'{LabelParts.WordOf(part)}' is ranked but has no place in head, hazards or foot");
        }

        LabelPart[] never = design.Layout == DesignLayout.Full
            ? [LabelPart.Id, LabelPart.Code, LabelPart.Name, LabelPart.SignalWord, LabelPart.Warnings]
            : [LabelPart.Id];
        foreach (var part in never.Where(p => placed.Contains(p) && !design.Always.Contains(p)))
        {
            throw members.Wrong("always", $"lacks '{LabelParts.WordOf(part)}', which the layout {design.Layout.ToString().ToLowerInvariant()} never leaves off");
        }
    }

    /// <summary>No type under the size that is counted as legible.</summary>
    private static void Type(Design design, StrictMembers members)
    {
        var sizes = design.Sizes;
        (string, DesignSize)[] type =
        [
            ("name", sizes.Name), ("name_alone", sizes.NameAlone), ("formula", sizes.Formula), ("warnings", sizes.Warnings),
            ("signal_word", sizes.SignalWord), ("statements", sizes.Statements), ("details", sizes.Details), ("details_alone", sizes.DetailsAlone),
        ];
        foreach (var (name, size) in type.Where(t => t.Item2.MostMm < Legibility.SmallestTypeMm))
        {
            throw members.Wrong($"sizes.{name}.most_mm", $"{size.MostMm} is too small to read; at least {Math.Ceiling(Legibility.SmallestTypeMm * 100) / 100}");
        }
    }
}
