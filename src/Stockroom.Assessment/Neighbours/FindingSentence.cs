namespace Stockroom.Assessment.Neighbours;

/// <summary>The one sentence that a volunteer reads.</summary>
internal static class FindingSentence
{
    private const int NamesShown = 4;

    /// <summary>The sentence of a finding; the conflict that weighs most comes first.</summary>
    public static string Of(IReadOnlyList<Conflict> conflicts)
    {
        var worst = conflicts[0];
        var centre = Centre(conflicts);
        var turned = conflicts.Select(c => centre is null ? IsTurned(c, worst) : c.B.Profile.Name == centre && c.A.Profile.Name != centre).ToList();
        var left = Names(conflicts.Select((c, i) => turned[i] ? c.B : c.A));
        var right = Names(conflicts.Select((c, i) => turned[i] ? c.A : c.B));
        var place = worst.A.Stand.Cabinet ?? worst.A.Stand.Room;
        var relation = Relation(conflicts, turned, worst);
        var verb = left.Count == 1 ? relation.One : relation.Several;
        return $"{Start(Listed(left))} {verb} {Listed(right)} in {place}: {worst.Cause}{What(worst)}. They need {Need(worst)}.";
    }

    private static string What(Conflict worst)
    {
        var reason = worst.Reason;
        if (reason.ByAir)
            return $", {reason.Product}";
        var product = reason.Product is null ? "" : $" ({reason.Product})";
        var only = reason.OnlyIf is null ? "" : $" if {reason.OnlyIf}";
        return $", which could bring {Alternatives([.. reason.Would.Take(3)])}{product}{only}";
    }

    // The one content that all conflicts share; null where there is none, or where another stands above it.
    private static string? Centre(IReadOnlyList<Conflict> conflicts)
    {
        var shared = new[] { conflicts[0].A.Profile.Name, conflicts[0].B.Profile.Name }
            .Where(n => conflicts.All(c => c.A.Profile.Name == n || c.B.Profile.Name == n))
            .ToList();
        return shared.Count == 1 && conflicts.Count > 1 && !conflicts.Any(c => StandsUnder(shared[0], c)) ? shared[0] : null;
    }

    private static bool StandsUnder(string name, Conflict conflict) =>
        (conflict.A.Profile.Name == name && Nearness.IsAbove(conflict.B.Stand, conflict.A.Stand))
        || (conflict.B.Profile.Name == name && Nearness.IsAbove(conflict.A.Stand, conflict.B.Stand));

    // The side that is unknown speaks first, then the one that stands above, then the one that breathes.
    private static bool IsTurned(Conflict conflict, Conflict worst)
    {
        if (conflict.A.Profile.IsUnknown != conflict.B.Profile.IsUnknown)
            return conflict.B.Profile.IsUnknown;
        if (Nearness.IsAbove(conflict.A.Stand, conflict.B.Stand))
            return false;
        if (Nearness.IsAbove(conflict.B.Stand, conflict.A.Stand))
            return true;
        return conflict.Reason.ByAir && worst.Reason.ByAir
            ? !conflict.Reason.ABreathes
            : conflict.Reason.FamilyA == worst.Reason.FamilyB || conflict.Reason.FamilyB == worst.Reason.FamilyA;
    }

    private static (string One, string Several) Relation(IReadOnlyList<Conflict> conflicts, List<bool> turned, Conflict worst)
    {
        if (worst.Reason.ByAir)
            return ("shares the air with", "share the air with");
        if (conflicts.Select((c, i) => turned[i] ? Nearness.IsAbove(c.B.Stand, c.A.Stand) : Nearness.IsAbove(c.A.Stand, c.B.Stand)).All(above => above))
            return ("stands above", "stand above");
        if (conflicts.All(c => c.Has == Separation.SameTray && c.A.Stand.Tray is not null && c.A.Stand.Tray.Id == c.B.Stand.Tray?.Id))
            return ("stands in one tray with", "stand in one tray with");
        return worst.Has == Separation.OwnCabinet ? ("stands in the next cabinet to", "stand in the next cabinet to") : ("stands in one cabinet with", "stand in one cabinet with");
    }

    private static string Need(Conflict worst) => worst.Needed switch
    {
        Separation.OwnTray => "a leak-tight tray each, neither above the other",
        Separation.OwnCabinet => "a cabinet each",
        _ => "cabinets that are not next to each other, or different rooms",
    };

    private static List<string> Names(IEnumerable<Cluster> clusters) => [.. clusters.Select(c => c.Profile.Name).Distinct(StringComparer.Ordinal)];

    private static string Alternatives(List<string> words) =>
        words.Count == 1 ? words[0] : $"{string.Join(", ", words.Take(words.Count - 1))} or {words[^1]}";

    internal static string Listed(List<string> names) => names.Count switch
    {
        1 => names[0],
        <= NamesShown => $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}",
        _ => $"{string.Join(", ", names.Take(NamesShown - 1))} and {names.Count - NamesShown + 1} more",
    };

    internal static string Start(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
