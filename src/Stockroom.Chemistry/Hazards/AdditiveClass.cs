using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>
/// A class in which shares add up: the mixture has a category as soon as the sum of C/L over its ingredients reaches 1,
/// L being each ingredient's specific limit, else its generic one (ECHA guidance on CLP, 1.6.3.4).
/// </summary>
public abstract class AdditiveClass : HazardClass
{
    /// <summary>One ingredient's part of a sum.</summary>
    protected sealed record Share(Ingredient Ingredient, decimal Limit, decimal Weight, decimal Quotient, Provenance Source);

    /// <summary>The parts that count towards a category.</summary>
    protected List<Share> SharesTowards(string target, Mixture mixture, Findings findings)
    {
        var shares = new List<Share>();
        foreach (var ingredient in mixture.Ingredients)
        {
            if (!Concerns(ingredient) || LimitTowards(target, ingredient, findings) is not { } limit)
                continue;
            var weight = Weight(target, ingredient);
            if (ingredient.Counted < Math.Min(RelevantFrom(ingredient, findings) / weight, SpecificFrom(ingredient)))
                continue;
            shares.Add(new Share(ingredient, limit.From, weight, ingredient.Counted * weight / limit.From, limit.Source));
        }

        return shares;
    }

    /// <summary>True as soon as the quotients reach 1; divisions are rounded at the fourteenth place.</summary>
    protected static bool Reached(IEnumerable<Share> shares) => Math.Round(shares.Sum(s => s.Quotient), 14) >= 1m;

    protected static string Because(IReadOnlyList<Share> shares) =>
        string.Join(" + ", shares.Select(s => $"{Explain.Share(s.Ingredient)}{(s.Weight == 1m ? "" : $" times M {Explain.Number(s.Weight)}")} of limit {Explain.Percent(s.Limit)}"))
        + (shares.Count > 1 ? $": the shares add up to {Explain.Number(shares.Sum(s => s.Quotient))} of the limit" : "");

    /// <summary>The limit by which an ingredient counts towards a category, or null where it does not.</summary>
    protected abstract (decimal From, Provenance Source)? LimitTowards(string target, Ingredient ingredient, Findings findings);

    /// <summary>False for an ingredient that cannot count in this class.</summary>
    protected virtual bool Concerns(Ingredient ingredient) => Own(ingredient).Count + OwnLimits(ingredient).Count > 0;

    /// <summary>Factor on the share; M in the aquatic sums.</summary>
    protected virtual decimal Weight(string target, Ingredient ingredient) => 1m;

    /// <summary>The smallest generic limit of an ingredient's own categories, or null.</summary>
    protected (decimal From, Provenance Source)? GenericTowards(string target, IEnumerable<string> categories, Findings findings)
    {
        (decimal From, Provenance Source)? least = null;
        foreach (var category in categories)
        {
            if (findings.Facts.Limits.Of(category, target, "sum", findings.Rules) is { } limit && (least is null || limit.FromPercent < least.Value.From))
                least = (limit.FromPercent, limit.Provenance);
        }

        return least;
    }

    /// <summary>The categories of an ingredient that play a part in this class, its own or a related one.</summary>
    protected virtual IEnumerable<string> Counting(Ingredient ingredient) => Own(ingredient).Select(c => c.Category);

    /// <summary>Specific limits that play a part in this class.</summary>
    protected virtual IEnumerable<ConcentrationLimit> Specific(Ingredient ingredient) => OwnLimits(ingredient);

    private decimal RelevantFrom(Ingredient ingredient, Findings findings)
    {
        var least = decimal.MaxValue;
        foreach (var category in Counting(ingredient))
            least = Math.Min(least, findings.Facts.Limits.RelevantFrom(category, findings.Rules));
        return least == decimal.MaxValue ? 0m : least;
    }

    private decimal SpecificFrom(Ingredient ingredient) =>
        Specific(ingredient).Select(l => l.FromPercent).DefaultIfEmpty(decimal.MaxValue).Min();
}
