namespace Stockroom.Chemistry.Hazards;

/// <summary>The precautionary statements chosen from those the label tables offer, first things first (CLP Art. 28).</summary>
internal static class PrecautionaryChoice
{
    public static IReadOnlyList<LabelStatement> Of(IReadOnlyList<ClassifiedCategory> categories, HazardFacts facts, RuleSet rules, int most)
    {
        var offered = new Dictionary<string, SortedSet<string>>(StringComparer.Ordinal);
        foreach (var category in categories)
        {
            foreach (var code in facts.Precautions.Of(category, rules))
            {
                if (!offered.TryGetValue(code, out var why))
                    offered[code] = why = new SortedSet<string>(StringComparer.Ordinal);
                why.Add(category.Statement.Length > 0 ? $"{category.Category} ({category.Statement})" : category.Category);
            }
        }

        var redundant = offered.Keys.SelectMany(facts.Precautions.MadeRedundantBy).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. offered
                .Where(o => !redundant.Contains(o.Key))
                .OrderBy(o => facts.Precautions.RankOf(o.Key))
                .ThenBy(o => o.Key, StringComparer.Ordinal)
                .Take(most)
                .OrderBy(o => o.Key, StringComparer.Ordinal)
                .Select(o => new LabelStatement(o.Key, facts.Texts.Printed(o.Key, rules), string.Join(", ", o.Value))),
        ];
    }
}
