using System.Text.RegularExpressions;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>The wording of every statement by edition, from statements.tsv.</summary>
public sealed partial class StatementTexts
{
    private readonly Dictionary<(string Code, RuleSet Edition), string> _texts = [];
    private readonly Dictionary<RuleSet, List<string>> _combined = [];

    private StatementTexts(Table table)
    {
        foreach (var row in table.Rows)
        {
            var edition = row.OneOf("edition", RuleSets.Words);
            if (!_texts.TryAdd((row.Text("code"), edition), row.Text("text")))
                throw row.Wrong("code", $"'{row.Text("code")}' stands twice in this edition");
        }

        foreach (var rules in Enum.GetValues<RuleSet>())
        {
            _combined[rules] = [.. _texts.Keys
                .Where(k => k.Code.StartsWith("H3", StringComparison.Ordinal) && k.Code.Contains('+', StringComparison.Ordinal) && k.Edition == (rules == RuleSet.Un ? RuleSet.Un : RuleSet.Eu))
                .Select(k => k.Code)
                .OrderByDescending(c => c.Length).ThenBy(c => c, StringComparer.Ordinal)];
        }
    }

    internal static StatementTexts Read() => new(EmbeddedTables.Facts("statements.tsv", "code", "edition", "text"));

    /// <summary>Every code and edition for which the table has a wording.</summary>
    public IReadOnlyDictionary<(string Code, RuleSet Edition), string> All => _texts;

    /// <summary>Combined hazard statements of an edition, those of most parts first.</summary>
    public IReadOnlyList<string> Combined(RuleSet rules) => _combined[rules];

    /// <summary>
    /// The wording as published. The US rules take the European wording of precautionary statements and the UN wording
    /// of hazard statements where they have none of their own; a code with an effect's letters is worded as in CLP.
    /// </summary>
    /// <exception cref="KeyNotFoundException">No edition words this code.</exception>
    public string Published(string code, RuleSet rules)
    {
        RuleSet[] order = rules switch
        {
            RuleSet.Eu => [RuleSet.Eu, RuleSet.Un],
            RuleSet.Un => [RuleSet.Un, RuleSet.Eu],
            _ => code[0] == 'P' ? [RuleSet.Us, RuleSet.Eu, RuleSet.Un] : [RuleSet.Us, RuleSet.Un, RuleSet.Eu],
        };
        foreach (var edition in order)
        {
            if (_texts.TryGetValue((code, edition), out var text))
                return text;
        }

        throw new KeyNotFoundException($"no wording for statement {code}");
    }

    /// <summary>The wording as it is printed: what the supplier may state is filled with the organs, or left out.</summary>
    public string Printed(string code, RuleSet rules, string? organs = null)
    {
        var text = Published(code, rules);
        if (organs is not null)
            text = Organs().Replace(text, $"({organs})");
        return Optional().Replace(text, "").TrimEnd();
    }

    /// <summary>The wording with its one placeholder filled: EUH208 names the sensitisers.</summary>
    public string Naming(string code, RuleSet rules, string names) => Placeholder().Replace(Published(code, rules), names);

    [GeneratedRegex("<[^>]*>", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Placeholder();

    [GeneratedRegex("<[^>]*organs[^>]*>", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Organs();

    [GeneratedRegex(" ?<[^>]*>", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Optional();
}
