namespace Stockroom.Chemistry.Hazards;

/// <summary>The hazard statements that remain after repetition is left out (CLP Art. 27) and parts are combined.</summary>
internal static class HazardStatementChoice
{
    public static IReadOnlyList<LabelStatement> Of(IReadOnlyList<ClassifiedCategory> categories, HazardFacts facts, RuleSet rules)
    {
        var codes = WithoutRepetition([.. categories.Select(c => c.Statement).Where(s => s.Length > 0).Distinct()], facts, rules).ToList();
        foreach (var combined in facts.Texts.Combined(rules))
        {
            var parts = combined.Split('+');
            if (!parts.All(codes.Contains))
                continue;
            codes[codes.FindIndex(parts.Contains)] = combined;
            codes.RemoveAll(parts.Contains);
        }

        return [.. codes.Select(code => Statement(code, categories, facts, rules))];
    }

    /// <summary>Codes without those that another one repeats.</summary>
    public static IEnumerable<string> WithoutRepetition(IReadOnlyList<string> codes, HazardFacts facts, RuleSet rules)
    {
        var left = facts.Precedence.Statements.Where(s => s.Rules.Contains(rules) && codes.Contains(s.Present)).Select(s => s.LeftOut).ToHashSet(StringComparer.Ordinal);
        return codes.Where(c => !left.Contains(c));
    }

    private static LabelStatement Statement(string code, IReadOnlyList<ClassifiedCategory> categories, HazardFacts facts, RuleSet rules)
    {
        var parts = code.Split('+');
        var concerned = categories.Where(c => parts.Contains(c.Statement)).ToList();
        var organs = concerned.Select(c => c.Organs).FirstOrDefault(o => o is not null);
        var text = facts.Texts.Printed(code, rules, organs);
        var shown = rules == RuleSet.Eu || parts.Length > 1 ? code : ElementTable.Base(code);
        return new LabelStatement(shown, text, string.Join(", ", concerned.Select(c => c.Category).Distinct()));
    }
}
