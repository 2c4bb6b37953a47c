using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Neighbours.ClassTables;

/// <summary>A class that a content's GHS categories bring, with its packing group; the group "" where the class has none.</summary>
internal sealed record TransportHazard(string Class, string Group, bool ByMouthOnly = false)
{
    public string Key => Class is "4.2" or "4.3" && Group.Length == 0 ? Class : $"{Class} {Group}{(ByMouthOnly && Group == "I" ? " oral" : "")}".TrimEnd();
}

/// <summary>Which of several hazards is the main one: UN Model Regulations 2.0.3, from hazard-precedence.tsv.</summary>
internal static class HazardPrecedence
{
    // These take precedence over all others, in this order.
    private static readonly string[] Always = ["1", "7", "2.3", "2.1", "2.2", "5.2"];

    private static readonly Lazy<Dictionary<(string A, string B), string>> Table = new(() => EmbeddedTables
        .Facts("hazard-precedence.tsv", "a", "b", "takes").Rows
        .ToDictionary(r => (r.Text("a"), r.Text("b")), r => r.Text("takes")));

    /// <summary>The hazards with the main one first.</summary>
    public static IReadOnlyList<TransportHazard> Sort(IReadOnlyList<TransportHazard> hazards)
    {
        var sorted = hazards.OrderBy(Rank).ToList();
        if (sorted.Count < 2 || Rank(sorted[0]) < Always.Length)
            return sorted;
        var main = sorted[0];
        foreach (var other in sorted.Skip(1))
        {
            if (Taken(main, other) == other.Class)
                main = other;
        }

        return [main, .. sorted.Where(h => h != main)];
    }

    private static int Rank(TransportHazard hazard)
    {
        var index = Array.FindIndex(Always, a => a == hazard.Class || a == hazard.Class.Split('.')[0]);
        if (index >= 0)
            return index;
        return hazard is { Class: "4.1", Group: "" } or { Class: "4.2", Group: "I" } ? Always.Length - 1 : Always.Length;
    }

    private static string? Taken(TransportHazard a, TransportHazard b)
    {
        foreach (var (x, y) in ((TransportHazard, TransportHazard)[])[(a, b), (b, a)])
        {
            if (Table.Value.TryGetValue((x.Key, y.Key), out var takes) || Table.Value.TryGetValue((x.Key, y.Class), out takes))
                return takes;
        }

        return a.Class;
    }
}
