using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>One generic limit: from this share on, an ingredient of a category gives the mixture the result.</summary>
public sealed record GenericLimit(string Ingredient, string? Result, decimal FromPercent, string Way, IReadOnlyList<RuleSet> Rules, Provenance Provenance);

/// <summary>The generic limits of all classes, from generic-limits.tsv.</summary>
public sealed class GenericLimits
{
    private readonly Dictionary<(string Ingredient, string Way, RuleSet Rules), List<GenericLimit>> _byIngredient = [];

    private GenericLimits(IReadOnlyList<GenericLimit> rows)
    {
        Rows = rows;
        foreach (var row in rows)
        {
            foreach (var rules in row.Rules)
            {
                var key = (row.Ingredient, row.Way, rules);
                if (!_byIngredient.TryGetValue(key, out var list))
                    _byIngredient[key] = list = [];
                list.Add(row);
            }
        }
    }

    public IReadOnlyList<GenericLimit> Rows { get; }

    internal static GenericLimits Read() => new(
        [.. EmbeddedTables.Facts("generic-limits.tsv", "ingredient", "result", "from_percent", "way", "rules").Rows.Select(r => new GenericLimit(
            r.Text("ingredient"), r.TextOrNull("result"), r.Decimal("from_percent"), r.Text("way"), RuleSets.Read(r, "rules"), r.Provenance))]);

    /// <summary>The limits of an ingredient's category, looked at alone, in a sum, and so on.</summary>
    public IReadOnlyList<GenericLimit> Of(string category, string way, RuleSet rules) =>
        _byIngredient.TryGetValue((category, way, rules), out var list) ? list : [];

    /// <summary>The limit by which an ingredient's category counts towards a result, or null where it does not.</summary>
    public GenericLimit? Of(string category, string result, string way, RuleSet rules)
    {
        foreach (var limit in Of(category, way, rules))
        {
            if (limit.Result == result)
                return limit;
        }

        return null;
    }

    /// <summary>Share from which an ingredient of this category counts at all; 0 where no such share is set.</summary>
    public decimal RelevantFrom(string category, RuleSet rules) =>
        Of(category, "relevant", rules) is [var first, ..] ? first.FromPercent : 0m;

    /// <summary>The row of a class of properties proved by test ("Ox. Sol.") in a given way.</summary>
    public GenericLimit Carry(string classPrefix, string way, RuleSet rules) => Of(classPrefix, way, rules)[0];
}
