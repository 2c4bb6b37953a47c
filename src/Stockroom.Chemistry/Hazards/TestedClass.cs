using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Chemistry.Hazards;

/// <summary>
/// A physical class that only a test proves. A mixture has the category by a specific limit where the entry has one;
/// without much water an ingredient's category is carried over, to the safe side; in water it is left unjudged, and said so.
/// </summary>
public abstract class TestedClass : HazardClass
{
    /// <summary>Beginning of its categories, as generic-limits.tsv names it.</summary>
    protected abstract string Prefix { get; }

    /// <summary>The state in which a mixture can have this class; null for any.</summary>
    protected virtual MatterState? OnlyFor => null;

    public override void Judge(Mixture mixture, Findings findings)
    {
        foreach (var ingredient in mixture.Ingredients)
        {
            var own = Own(ingredient);
            var bands = OwnLimits(ingredient);
            if (own.Count == 0 && bands.Count == 0)
                continue;
            var carry = findings.Facts.Limits.Carry(Prefix, "carry", findings.Rules);
            if (bands.Count > 0)
                ByLimits(ingredient, bands, carry.FromPercent, findings);
            else if (ingredient.Percent >= carry.FromPercent)
                Carry(ingredient, own, carry, mixture, findings);
        }
    }

    private static void ByLimits(Ingredient ingredient, IReadOnlyList<ConcentrationLimit> bands, decimal least, Findings findings)
    {
        foreach (var band in bands.Where(b => b.Contains(ingredient.Counted) && (b.FromPercent > 0 || ingredient.Counted >= least)))
            findings.Add(band.Category, band.Statement, null, () => Explain.Limit(ingredient, band), band.Provenance);
    }

    private void Carry(Ingredient ingredient, IReadOnlyList<AssignedCategory> own, GenericLimit carry, Mixture mixture, Findings findings)
    {
        var names = string.Join(", ", own.Select(c => c.Category));
        if (OnlyFor is { } state && mixture.State != state)
        {
            findings.Note($"not judged: {names} of {ingredient.Name}, which is here in another state than its entry");
            return;
        }

        if (mixture.IsMostlyWater)
        {
            findings.Note($"not judged: {names} of {ingredient.Name}, which is here mostly diluted in water; a test would decide");
            return;
        }

        foreach (var category in own)
            findings.Add(category.Category, category.Statement, category.Organs, () => $"{Explain.Share(ingredient)} ({category.Category}): carried over to the safe side, no test of the mixture", carry.Provenance);
        findings.Note($"{names} is carried over from {ingredient.Name}; only a test of the mixture would prove or remove it");
    }
}
