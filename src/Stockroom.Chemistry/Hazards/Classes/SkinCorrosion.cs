using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>
/// Skin corrosion and irritation, CLP Annex I 3.2: shares add up (Table 3.2.3); an ingredient whose own pH is extreme
/// and that has no published limit corrodes from 1 % on (Table 3.2.4); an extreme pH of the whole counts where it is given.
/// </summary>
public sealed class SkinCorrosion : AdditiveClass
{
    private const string Corrosive = "Skin Corr. 1";

    public override string Name => "Skin corrosion";

    public override IReadOnlyList<string> Categories { get; } = ["Skin Corr. 1A", "Skin Corr. 1B", "Skin Corr. 1C", Corrosive, "Skin Irrit. 2", "Skin Irrit. 3"];

    public override bool JudgedAlways => true;

    public override void JudgePure(Ingredient substance, Mixture mixture, Findings findings)
    {
        base.JudgePure(substance, mixture, findings);
        ExtremePh.Judge(mixture, findings, Corrosive, this);
    }

    public override void Judge(Mixture mixture, Findings findings)
    {
        foreach (var target in Categories)
        {
            var shares = SharesTowards(target, mixture, findings);
            if (!Reached(shares))
                continue;
            var category = target is "Skin Corr. 1B" or "Skin Corr. 1C" && UndividedIsIn(mixture) ? Corrosive : target;
            findings.Add(category, findings.Facts.Elements.StatementOf(category), null, () => Because(shares), SourceOf(shares));
            break;
        }

        ExtremePh.Judge(mixture, findings, Corrosive, this);
    }

    internal static bool IsCorrosive(string category) => category.StartsWith("Skin Corr.", StringComparison.Ordinal);

    protected override (decimal From, Provenance Source)? LimitTowards(string target, Ingredient ingredient, Findings findings)
    {
        var bands = OwnLimits(ingredient).ToList();
        if (bands.Count == 0)
            return GenericTowards(target, Counting(ingredient), findings);
        var severe = bands.Where(b => Severity(b.Category) <= Severity(target)).Select(b => (From: b.FromPercent, Source: b.Provenance)).ToList();
        var generic = GenericTowards(target, Counting(ingredient), findings);
        if (IsCorrosive(target) ? bands.Exists(b => IsCorrosive(b.Category)) : bands.Exists(b => !IsCorrosive(b.Category)))
            return severe.Count == 0 ? null : severe.MinBy(b => b.From);
        if (generic is { } g)
            severe.Add(g);
        return severe.Count == 0 ? null : severe.MinBy(b => b.From);
    }

    private static bool UndividedIsIn(Mixture mixture) =>
        mixture.Ingredients.Any(i => i.Percent >= 1m && i.Categories.Any(c => c.Category == Corrosive));

    private static Provenance SourceOf(IReadOnlyList<Share> shares) => shares.MaxBy(s => s.Quotient)!.Source;
}
