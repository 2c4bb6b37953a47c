using Stockroom.Chemistry.Hazards;
using Stockroom.Labels.Layout;

namespace Stockroom.Desk;

/// <summary>What the chosen edition lets the label of a small package leave off, least first, each with its clause and condition.</summary>
internal static class LabelReliefs
{
    private const string Elsewhere = "Full label on the outer packing or tag.";
    private const decimal ClpInnerMillilitres = 10;
    private const decimal OshaSmallMillilitres = 100;
    private const decimal OshaSmallestMillilitres = 3;

    /// <summary>CLP Annex I 1.5.2.4: what a small inner package still shows.</summary>
    private static readonly string[] GravestPictograms = ["GHS01", "GHS05", "GHS06", "GHS08"];

    public static IReadOnlyList<Relief> Of(LabelText text, Classification classification, HazardFacts facts, LabelWishes wishes, decimal? millilitres)
    {
        if (text.Pictograms.Count + text.HazardStatements.Count == 0 || classification.IsUnknown)
            return [];
        return wishes.Rules switch
        {
            RuleSet.Eu => [.. Eu(text, classification, facts, wishes, millilitres)],
            RuleSet.Us => [.. Us(text, wishes, millilitres)],
            _ => wishes.FullLabelElsewhere ? [WithoutStatements(text, "statements are left off: GHS 1.4.10.5.4.4 and Annex 7, small packages whose full label is on the outer packing")] : [],
        };
    }

    private static IEnumerable<Relief> Eu(LabelText text, Classification classification, HazardFacts facts, LabelWishes wishes, decimal? millilitres)
    {
        var reduced = millilitres is { } ml ? SmallPackages.Reduce(classification, facts, ml) : null;
        if (reduced is not null)
        {
            yield return new Relief(
                text with
                {
                    Pictograms = reduced.Elements.Pictograms,
                    SignalWord = reduced.Elements.SignalWord,
                    HazardStatements = [.. reduced.Elements.HazardStatements.Concat(reduced.Elements.Supplemental).Select(s => new Statement(s.Code, s.Text))],
                    PrecautionaryStatements = [.. reduced.Elements.Precautionary.Select(s => new Statement(s.Code, s.Text))],
                    Remarks = [.. text.Remarks, "Up to 125 ml: some statements left off."],
                },
                $"statements for {string.Join(", ", reduced.Categories)} may be left off: package of up to 125 ml, not supplied to the general public ({reduced.Clause})");
        }

        if (!wishes.FullLabelElsewhere)
            yield break;
        yield return WithoutStatements(
            text,
            "statements are left off: package too small or awkward for them, full label on the outer packing or a tag (CLP Art. 29(1), Annex I 1.5.1.2)"
            + (wishes.Keeper is null ? "; the keeper's name and telephone belong on it: --keeper" : ""));
        if (millilitres is not <= ClpInnerMillilitres)
            yield break;
        var grave = text.Pictograms.Where(GravestPictograms.Contains).ToList();
        if (grave.Count > 2 && grave.Exists(p => p is "GHS06" or "GHS08"))
            grave.RemoveAll(p => p is "GHS01" or "GHS05");
        yield return new Relief(
            text with { SignalWord = null, Pictograms = grave, HazardStatements = [], PrecautionaryStatements = [], Remarks = [.. text.Remarks, Elsewhere] },
            "only name and gravest pictograms: inner package of up to 10 ml for research or quality control, full label on the outer packing (CLP Annex I 1.5.2.4)");
    }

    private static IEnumerable<Relief> Us(LabelText text, LabelWishes wishes, decimal? millilitres)
    {
        if (!wishes.FullLabelElsewhere || millilitres is not <= OshaSmallMillilitres)
            yield break;
        yield return WithoutStatements(text, "statements are left off: up to 100 mL where a full label is not feasible, full label on the outer package (29 CFR 1910.1200(f)(12)(ii))"
            + (wishes.Keeper is null ? "; name and telephone belong on it: --keeper" : ""));
        if (millilitres is <= OshaSmallestMillilitres)
        {
            yield return new Relief(
                text with { SignalWord = null, Pictograms = [], HazardStatements = [], PrecautionaryStatements = [] },
                "only the name: up to 3 mL where a label would be in the way of use, full label on the outer package (29 CFR 1910.1200(f)(12)(iii))");
        }
    }

    private static Relief WithoutStatements(LabelText text, string says) => new(
        text with { HazardStatements = [], PrecautionaryStatements = [], Remarks = [.. text.Remarks, Elsewhere] }, says);
}
