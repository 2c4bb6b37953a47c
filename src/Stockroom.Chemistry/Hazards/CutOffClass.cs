using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>
/// A class in which each ingredient is looked at alone: it gives the mixture a category from its specific limit on,
/// else from the generic one. Nothing is summed.
/// </summary>
public abstract class CutOffClass : HazardClass
{
    /// <summary>One ingredient's contribution.</summary>
    protected sealed record Result(string Category, string Statement, string? Organs, Func<string> Because, Provenance Source);

    public override void Judge(Mixture mixture, Findings findings)
    {
        foreach (var lane in mixture.Ingredients.SelectMany(i => ResultsOf(i, mixture, findings)).GroupBy(r => Lane(r.Category)))
        {
            var results = lane.ToList();
            var worst = results.MinBy(r => Severity(r.Category))!.Category;
            var standing = results.Where(r => r.Category == worst).ToList();
            var statement = StatementLetters.Merge(standing.Select(r => r.Statement), results.Where(r => r.Category != worst).Select(r => r.Statement));
            var organs = standing.TrueForAll(r => r.Organs == standing[0].Organs) ? standing[0].Organs : null;
            foreach (var result in standing)
                findings.Add(worst, statement, organs, result.Because, result.Source);
        }
    }

    /// <summary>Categories that stand beside each other are in different lanes; within a lane the most severe stands.</summary>
    protected virtual string Lane(string category) => "";

    /// <summary>The share that is compared with a limit.</summary>
    protected virtual decimal ShareOf(Ingredient ingredient, Mixture mixture) => ingredient.Counted;

    /// <summary>What one ingredient contributes.</summary>
    protected virtual IEnumerable<Result> ResultsOf(Ingredient ingredient, Mixture mixture, Findings findings)
    {
        var bands = OwnLimits(ingredient);
        var share = ShareOf(ingredient, mixture);
        foreach (var band in bands.Where(b => b.Contains(share)))
            yield return new Result(band.Category, band.Statement, OrgansOf(ingredient, band.Category), () => Explain.Limit(ingredient, band), band.Provenance);

        foreach (var own in Own(ingredient))
        {
            if (bands.Any(b => b.Category == own.Category && b.Statement == own.Statement))
                continue;
            if (Generic(own.Category, share, mixture, findings) is { } limit)
            {
                var statement = limit.Result == own.Category ? own.Statement : StatementFor(limit.Result!, own, findings);
                yield return new Result(
                    limit.Result!, statement, own.Organs,
                    () => $"{Explain.Share(ingredient)}{(share == ingredient.Counted ? "" : $", with its group {Explain.Percent(share)}")} ({own.Category}): generic limit from {Explain.Percent(limit.FromPercent)} on", limit.Provenance);
            }
        }
    }

    private GenericLimit? Generic(string category, decimal share, Mixture mixture, Findings findings)
    {
        var gas = mixture.State == Catalogue.MatterState.Gas ? findings.Facts.Limits.Of(category, "alone gas", findings.Rules) : [];
        var limits = gas.Count > 0 ? gas : findings.Facts.Limits.Of(category, "alone", findings.Rules);
        return limits.Where(l => share >= l.FromPercent).MinBy(l => Severity(l.Result!));
    }

    private static string StatementFor(string category, AssignedCategory own, Findings findings)
    {
        var elements = findings.Facts.Elements;
        return elements.Of(category, own.Statement) is not null ? own.Statement : elements.StatementOf(category);
    }

    private static string? OrgansOf(Ingredient ingredient, string category) =>
        ingredient.Categories.FirstOrDefault(c => c.Category[..^1] == category[..^1])?.Organs;
}
