using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>Whose rules and whose wording: CLP of the European Union, the GHS of the United Nations, or the US hazard communication standard.</summary>
public enum RuleSet
{
    Eu = 0,
    Un,
    Us,
}

/// <summary>The words by which rule sets are named in tables and commands.</summary>
public static class RuleSets
{
    public static readonly IReadOnlyDictionary<string, RuleSet> Words = new Dictionary<string, RuleSet>(StringComparer.Ordinal)
    {
        ["eu"] = RuleSet.Eu,
        ["un"] = RuleSet.Un,
        ["us"] = RuleSet.Us,
    };

    /// <summary>Reads eu, un or us.</summary>
    /// <exception cref="FormatException">The word is none of them.</exception>
    public static RuleSet Parse(string word) => Words.TryGetValue(word.Trim().ToLowerInvariant(), out var rules)
        ? rules
        : throw new FormatException($"'{word}' is not a set of rules; it must be eu, un or us");

    internal static IReadOnlyList<RuleSet> Read(TableRow row, string column) =>
        [.. row.List(column).Select(w => Words.TryGetValue(w, out var rules) ? rules : throw row.Wrong(column, $"'{w}' must be eu, un or us"))];
}
