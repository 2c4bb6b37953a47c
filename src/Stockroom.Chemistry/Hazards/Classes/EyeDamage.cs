using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>
/// Serious eye damage and eye irritation, CLP Annex I 3.3, Table 3.3.3. What corrodes skin damages eyes: beside skin
/// corrosion the category stands only where an ingredient's own entry or limit names it.
/// </summary>
public sealed class EyeDamage : AdditiveClass
{
    private const string Damage = "Eye Dam. 1";
    private const string Irritation = "Eye Irrit. 2";

    public override string Name => "Serious eye damage";

    public override IReadOnlyList<string> Categories { get; } = [Damage, Irritation, "Eye Irrit. 2B"];

    public override bool JudgedAlways => true;

    public override void JudgePure(Ingredient substance, Mixture mixture, Findings findings)
    {
        base.JudgePure(substance, mixture, findings);
        ExtremePh.Judge(mixture, findings, Damage, this);
    }

    public override void Judge(Mixture mixture, Findings findings)
    {
        var corrosive = findings.Any(c => SkinCorrosion.IsCorrosive(c.Category));
        foreach (var target in (string[])[Damage, Irritation])
        {
            var shares = SharesTowards(target, mixture, findings);
            if (!Reached(shares))
                continue;
            if (!corrosive || (target == Damage && shares.Exists(s => NamesDamage(s.Ingredient))))
                findings.Add(target, findings.Facts.Elements.StatementOf(target), null, () => Because(shares), shares.MaxBy(s => s.Quotient)!.Source);
            break;
        }

        ExtremePh.Judge(mixture, findings, Damage, this);
    }

    protected override bool Concerns(Ingredient ingredient) => base.Concerns(ingredient) || ingredient.Profile.Index.Concerned.Any(c => c is SkinCorrosion);

    protected override IEnumerable<string> Counting(Ingredient ingredient) =>
        ingredient.Categories.Select(c => c.Category).Where(c => Owns(c) || SkinCorrosion.IsCorrosive(c));

    protected override IEnumerable<ConcentrationLimit> Specific(Ingredient ingredient) =>
        ingredient.Profile.Limits.Where(l => Owns(l.Category) || SkinCorrosion.IsCorrosive(l.Category));

    protected override (decimal From, Provenance Source)? LimitTowards(string target, Ingredient ingredient, Findings findings)
    {
        var bands = ingredient.Profile.Limits.Count == 0 ? [] : Specific(ingredient).ToList();
        if (bands.Count == 0)
            return GenericTowards(target, Counting(ingredient), findings);
        var severe = bands
            .Where(b => SkinCorrosion.IsCorrosive(b.Category) || Severity(b.Category) <= Severity(target))
            .Select(b => (From: b.FromPercent, Source: b.Provenance))
            .ToList();
        if (!bands.Exists(b => Owns(b.Category)) && GenericTowards(target, Counting(ingredient), findings) is { } generic)
            severe.Add(generic);
        return severe.Count == 0 ? null : severe.MinBy(b => b.From);
    }

    private static bool NamesDamage(Ingredient ingredient) =>
        ingredient.Categories.Any(c => c.Category == Damage)
        || ingredient.Profile.Limits.Any(l => l.Category == Damage && l.Contains(ingredient.Counted));
}
