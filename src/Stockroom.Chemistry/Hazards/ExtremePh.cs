using Stockroom.Chemistry.Hazards.Reactions;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>
/// A pH of 2 or less, or of 11.5 or more, means corrosion (CLP Annex I 3.2.3.1.2 and Tables 3.2.4, 3.3.4). It counts only
/// where it is given; published limits win over it, and the contradiction is said.
/// </summary>
internal static class ExtremePh
{
    private const decimal Acid = 2m;
    private const decimal Alkali = 11.5m;
    private const decimal IngredientFrom = 1m;

    private static readonly Provenance Ingredients = new("Regulation (EC) No 1272/2008", "Annex I Tables 3.2.4 and 3.3.4", "2025");
    private static readonly Provenance Whole = new("Regulation (EC) No 1272/2008", "Annex I 3.2.3.1.2 and 3.3.3.1.2", "2025");

    public static bool IsExtreme(decimal? ph) => ph is <= Acid or >= Alkali;

    public static void Judge(Mixture mixture, Findings findings, string category, HazardClass owner)
    {
        if (findings.Any(c => owner.Owns(c.Category) && owner.Severity(c.Category) <= owner.Severity(category)))
            return;
        if (category != "Skin Corr. 1" && findings.Any(c => c.Category.StartsWith("Skin Corr.", StringComparison.Ordinal)))
            return;
        var statement = findings.Facts.Elements.StatementOf(category);
        var source = mixture.Ingredients.FirstOrDefault(i => IsExtreme(i.Profile.Ph) && i.Percent >= IngredientFrom && !HasLimits(i, owner));
        if (source is not null)
            Replace(findings, owner, category, statement, () => $"{Explain.Share(source)}, pH {Explain.Number(source.Profile.Ph!.Value)}: an extreme pH counts from {Explain.Percent(IngredientFrom)} on", Ingredients);
        else if (IsExtreme(mixture.Ph))
            ByWhole(mixture, findings, category, statement, owner);
    }

    /// <summary>
    /// Says where a given pH is milder than so much of a strong acid or hydroxide allows; the categories by the limits,
    /// the stricter side, stand.
    /// </summary>
    public static void NoteMildness(Mixture mixture, Findings findings)
    {
        if (mixture.Ph is not { } ph || IsExtreme(ph) || mixture.IsPure)
            return;
        var ions = findings.Facts.Ions;
        var acids = mixture.Ingredients.Where(i => i.Percent >= IngredientFrom && ions.Is(i.Name, IonKind.Acid)).ToList();
        var alkalis = mixture.Ingredients.Where(i => i.Percent >= IngredientFrom && ions.Is(i.Name, IonKind.Hydroxide)).ToList();
        if (acids.Count + alkalis.Count == 0 || (acids.Count > 0 && alkalis.Count > 0))
            return;
        var strong = acids.Count > 0 ? acids : alkalis;
        var standing = findings.Categories.Where(c => c.Category.StartsWith("Skin Corr.", StringComparison.Ordinal) || c.Category.StartsWith("Skin Irrit.", StringComparison.Ordinal) || c.Category.StartsWith("Eye ", StringComparison.Ordinal)).Select(c => c.Category).ToList();
        findings.Note($"contradiction: {string.Join(", ", strong.Select(Explain.Share))} means {(standing.Count == 0 ? $"a pH {(acids.Count > 0 ? "of 2 or less" : "of 11.5 or more")}" : string.Join(", ", standing) + " by the limits")}; "
            + $"the given pH {Explain.Number(ph)} would mean less. {(standing.Count == 0 ? "One of the two is wrong" : "The limits, the stricter side, stand")}");
    }

    private static void ByWhole(Mixture mixture, Findings findings, string category, string statement, HazardClass owner)
    {
        var ph = Explain.Number(mixture.Ph!.Value);
        var concerned = mixture.Ingredients.Where(i => i.Categories.Any(c => owner.Owns(c.Category)) || HasLimits(i, owner)).ToList();
        if (concerned.Count > 0 && concerned.TrueForAll(i => HasLimits(i, owner)))
        {
            findings.Note($"contradiction: pH {ph} would mean {category}; the published limits of {string.Join(", ", concerned.Select(i => i.Name))} mean less, and win");
            return;
        }

        Replace(findings, owner, category, statement, () => $"pH {ph} of the whole is extreme, and no published limit says otherwise", Whole);
    }

    private static void Replace(Findings findings, HazardClass owner, string category, string statement, Func<string> because, Provenance source)
    {
        findings.Supersede(c => owner.Owns(c) && owner.Severity(c) > owner.Severity(category));
        findings.Add(category, statement, null, because, source);
    }

    private static bool HasLimits(Ingredient ingredient, HazardClass owner) =>
        ingredient.Profile.Limits.Any(l => owner.Owns(l.Category) || l.Category.StartsWith("Skin Corr.", StringComparison.Ordinal));
}
