using System.Collections.Frozen;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>What a label may leave off for a category.</summary>
public enum LeaveOff
{
    /// <summary>Precautionary statements.</summary>
    Precautions,

    /// <summary>Hazard and precautionary statements.</summary>
    Statements,

    /// <summary>Pictogram, signal word and statements.</summary>
    All,
}

/// <summary>Label elements reduced for a small package, and which categories allowed it.</summary>
public sealed record ReducedElements(LabelElements Elements, IReadOnlyList<string> Categories, string Clause);

/// <summary>Categories whose statements a small package need not carry, from small-packages.tsv (CLP Art. 29(2), Annex I 1.5.2.1).</summary>
public static class SmallPackages
{
    private static readonly Lazy<FrozenDictionary<(string Category, RuleSet Rules), (decimal UpTo, LeaveOff LeaveOff, bool NotForPublic, Provenance Source)>> Rows = new(Read);

    private static readonly Dictionary<string, LeaveOff> Words = new(StringComparer.Ordinal)
    {
        ["precautions"] = LeaveOff.Precautions,
        ["statements"] = LeaveOff.Statements,
        ["all"] = LeaveOff.All,
    };

    /// <summary>What may be left off for a category in a package of that capacity; null where nothing may.</summary>
    /// <param name="category">Abbreviation, such as "Flam. Liq. 2".</param>
    /// <param name="rules">Edition.</param>
    /// <param name="millilitres">Capacity, above 0.</param>
    /// <param name="toPublic">True where the package is supplied to the general public.</param>
    public static LeaveOff? For(string category, RuleSet rules, decimal millilitres, bool toPublic = false) =>
        Rows.Value.TryGetValue((category, rules), out var row) && millilitres <= row.UpTo && !(toPublic && row.NotForPublic) ? row.LeaveOff : null;

    /// <summary>
    /// The label of a classification without what its categories allow a small package to leave off. The statements of every other
    /// category stay, the pictograms and the signal word too. Null where nothing may be left off.
    /// </summary>
    public static ReducedElements? Reduce(Classification classification, HazardFacts facts, decimal millilitres, bool toPublic = false)
    {
        if (classification.IsUnknown)
            return null;
        var allowed = classification.Categories
            .Select(c => (Category: c, Off: For(c.Category, classification.Rules, millilitres, toPublic)))
            .ToList();
        if (allowed.TrueForAll(a => a.Off is null))
            return null;
        var whole = LabelElements.Of(Keep(o => o != LeaveOff.All), facts);
        var hazards = LabelElements.Of(Keep(o => o is null or LeaveOff.Precautions), facts);
        var precautions = LabelElements.Of(Keep(o => o is null), facts);
        return new ReducedElements(
            whole with { HazardStatements = hazards.HazardStatements, Precautionary = precautions.Precautionary },
            [.. allowed.Where(a => a.Off is not null).Select(a => a.Category.Category)],
            "Regulation (EC) No 1272/2008 Annex I 1.5.2.1");

        Classification Keep(Func<LeaveOff?, bool> keep) => classification with { Categories = [.. allowed.Where(a => keep(a.Off)).Select(a => a.Category)] };
    }

    private static FrozenDictionary<(string, RuleSet), (decimal, LeaveOff, bool, Provenance)> Read() =>
        EmbeddedTables.Facts("small-packages.tsv", "category", "rules", "up_to_ml", "leave_off", "not_for_public").Rows
            .SelectMany(r => RuleSets.Read(r, "rules").Select(rules => (
                Key: (r.Text("category"), rules), Value: (r.Decimal("up_to_ml"), r.OneOf("leave_off", Words), r.YesNo("not_for_public"), r.Provenance))))
            .ToFrozenDictionary(x => x.Key, x => x.Value);
}
