namespace Stockroom.Assessment.Neighbours;

/// <summary>Gathers conflicts into findings: those of one cause that hang together through shared containers are one.</summary>
internal static class FindingWriter
{
    public static IReadOnlyList<Finding> Write(IReadOnlyList<Conflict> conflicts) =>
        [.. conflicts
            .GroupBy(c => c.Cause, StringComparer.Ordinal)
            .SelectMany(g => Connected([.. g]))
            .Select(Finding)
            .OrderByDescending(f => f.Separation)
            .ThenBy(f => f.Would.Min(Consequences.Rank))
            .ThenByDescending(f => f.Separation - f.Pairs.Min(p => p.Stand))
            .ThenByDescending(f => f.Pairs.Count)
            .ThenBy(f => f.Cause, StringComparer.Ordinal)];

    private static IEnumerable<List<Conflict>> Connected(List<Conflict> conflicts)
    {
        var root = new Dictionary<int, int>();
        foreach (var conflict in conflicts)
        {
            var a = Root(root, conflict.A.Index);
            var b = Root(root, conflict.B.Index);
            root[Math.Max(a, b)] = Math.Min(a, b);
        }

        return conflicts.GroupBy(c => Root(root, c.A.Index)).Select(g => g.ToList());
    }

    private static int Root(Dictionary<int, int> root, int index)
    {
        root.TryAdd(index, index);
        while (root[index] != index)
            index = root[index] = root[root[index]];
        return index;
    }

    private static Finding Finding(List<Conflict> conflicts)
    {
        var order = Weighed(conflicts);
        conflicts.Sort((x, y) => Compare(x, y, order));
        var worst = conflicts[0];
        return new Finding
        {
            Cause = FindingSentence.Of(conflicts),
            Rule = worst.Cause,
            Would = [.. order.Keys.SelectMany(r => r.Would).Distinct(StringComparer.Ordinal).OrderBy(Consequences.Rank)],
            Product = worst.Reason.Product,
            Source = worst.Reason.Source,
            Verified = worst.Reason.Verified,
            Separation = worst.Needed,
            ByAir = conflicts.Exists(c => c.Reason.ByAir),
            Pairs = [.. conflicts.SelectMany(Pairs).OrderBy(p => p.A, StringComparer.Ordinal).ThenBy(p => p.B, StringComparer.Ordinal)],
        };
    }

    // The few reasons are weighed once, not at every comparison of two of the many conflicts.
    private static Dictionary<PairReason, int> Weighed(List<Conflict> conflicts)
    {
        var order = new Dictionary<PairReason, int>(ReferenceEqualityComparer.Instance);
        foreach (var reason in conflicts.Select(c => c.Reason).Distinct(ReferenceEqualityComparer.Instance).Cast<PairReason>()
            .OrderBy(r => r.Urgency).ThenBy(r => r.Would.Min(Consequences.Rank)).ThenBy(r => r.Order).ThenBy(r => r.FamilyA, StringComparer.Ordinal))
            order[reason] = order.Count;
        return order;
    }

    private static int Compare(Conflict x, Conflict y, Dictionary<PairReason, int> order)
    {
        var by = y.Needed.CompareTo(x.Needed);
        if (by == 0)
            by = x.Has.CompareTo(y.Has);
        if (by == 0)
            by = order[x.Reason].CompareTo(order[y.Reason]);
        if (by == 0)
            by = string.CompareOrdinal(x.A.Items[0].Key, y.A.Items[0].Key);
        return by != 0 ? by : string.CompareOrdinal(x.B.Items[0].Key, y.B.Items[0].Key);
    }

    private static IEnumerable<FoundPair> Pairs(Conflict conflict)
    {
        var aAbove = Nearness.IsAbove(conflict.A.Stand, conflict.B.Stand);
        var bAbove = Nearness.IsAbove(conflict.B.Stand, conflict.A.Stand);
        for (var i = 0; i < conflict.A.Items.Count; i++)
        {
            var first = ReferenceEquals(conflict.A, conflict.B) ? i + 1 : 0;
            for (var j = first; j < conflict.B.Items.Count; j++)
            {
                var a = conflict.A.Items[i];
                var b = conflict.B.Items[j];
                yield return new FoundPair(a.Key, b.Key, a.Label, b.Label, conflict.Has, aAbove, bAbove, conflict.Reason.ByAir ? conflict.Reason.ABreathes : null);
            }
        }
    }
}
