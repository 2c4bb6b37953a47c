namespace Stockroom.Chemistry.Hazards;

/// <summary>The pictograms that remain after precedence (CLP Art. 26, GHS 1.4.10.5.3.1).</summary>
internal static class PictogramChoice
{
    public static (IReadOnlyList<string> Shown, IReadOnlyList<string> Optional) Of(IReadOnlyList<ClassifiedCategory> categories, HazardFacts facts, RuleSet rules)
    {
        // Which hazards each pictogram stands for.
        var standing = new SortedDictionary<string, HashSet<string>>(StringComparer.Ordinal);
        foreach (var category in categories)
        {
            if (facts.Elements.Of(category.Category, category.Statement) is not { } elements)
                continue;
            foreach (var pictogram in elements.Pictograms)
            {
                if (!standing.TryGetValue(pictogram, out var hazards))
                    standing[pictogram] = hazards = new HashSet<string>(StringComparer.Ordinal);
                hazards.Add(category.Category);
            }
        }

        var compulsory = categories
            .Select(c => facts.Elements.Of(c.Category, c.Statement)?.Pictograms ?? [])
            .Where(p => p.Count > 1)
            .SelectMany(p => p)
            .ToHashSet(StringComparer.Ordinal);
        var optional = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var rule in facts.Precedence.Pictograms.Where(r => r.Rules.Contains(rules)))
            Apply(rule, standing, compulsory, optional);
        return ([.. standing.Keys.Except(optional, StringComparer.Ordinal)], [.. optional.Where(standing.ContainsKey)]);
    }

    private static void Apply(PictogramRule rule, SortedDictionary<string, HashSet<string>> standing, HashSet<string> compulsory, SortedSet<string> optional)
    {
        if (!standing.TryGetValue(rule.Present, out var present) || !standing.TryGetValue(rule.GivesWay, out var hazards))
            return;
        if (rule.BecauseOf is { } beginning && !present.Any(c => c.StartsWith(beginning, StringComparison.Ordinal)))
            return;
        if (rule.Optional)
        {
            if (!compulsory.Contains(rule.GivesWay))
                optional.Add(rule.GivesWay);
            return;
        }

        if (rule.ForHazards.Count == 0)
            hazards.Clear();
        else
            hazards.RemoveWhere(c => rule.ForHazards.Any(f => c.StartsWith(f, StringComparison.Ordinal)));
        if (hazards.Count == 0)
            standing.Remove(rule.GivesWay);
    }
}
