using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>The aquatic sums, most severe category first; an ingredient of category 1 counts M times.</summary>
public abstract class AquaticClass : AdditiveClass
{
    public override void Judge(Mixture mixture, Findings findings)
    {
        if (!findings.Facts.Elements.Has(Categories[0], findings.Facts.Elements.StatementOf(Categories[0]), findings.Rules))
            return;
        foreach (var ingredient in mixture.Ingredients.Where(i => Own(i).Any(c => c.Category == Categories[0]) && FactorOf(i) is null && !mixture.IsPure))
            findings.Note($"the M-factor of {ingredient.Name} for {Categories[0]} is not published; 1 was taken, which may be too low");
        foreach (var target in Categories)
        {
            var shares = SharesTowards(target, mixture, findings);
            if (!Reached(shares))
                continue;
            findings.Add(target, findings.Facts.Elements.StatementOf(target), null, () => Because(shares), shares.MaxBy(s => s.Quotient)!.Source);
            return;
        }
    }

    /// <summary>M of an ingredient of category 1, or null where none is published.</summary>
    protected abstract decimal? FactorOf(Ingredient ingredient);

    protected override decimal Weight(string target, Ingredient ingredient) =>
        CountsFactor(target) && Own(ingredient).Any(c => c.Category == Categories[0]) ? FactorOf(ingredient) ?? 1m : 1m;

    /// <summary>False for a category whose sum takes shares as they are.</summary>
    protected virtual bool CountsFactor(string target) => true;

    protected override (decimal From, Provenance Source)? LimitTowards(string target, Ingredient ingredient, Findings findings) =>
        GenericTowards(target, Counting(ingredient), findings);
}
