namespace Stockroom.Assessment.Neighbours;

/// <summary>The one sentence that a volunteer reads.</summary>
internal static class FindingSentence
{
    private const int NamesShown = 4;

    public static string Of(IReadOnlyList<Conflict> conflicts, Conflict worst)
    {
        var (left, right) = Sides(conflicts, worst);
        var above = conflicts.Any(c => Nearness.IsAbove(c.A.Stand, c.B.Stand)) && !conflicts.Any(c => Nearness.IsAbove(c.B.Stand, c.A.Stand));
        var place = worst.A.Stand.Cabinet ?? worst.A.Stand.Room;
        var verb = Stands(worst, above);
        var only = worst.Reason.OnlyIf is { } condition ? $" if {condition}" : "";
        var product = worst.Reason.Product is { } p && !worst.Reason.ByAir ? $" ({p})" : "";
        var effect = worst.Reason is { ByAir: true, Product: { } e } ? $": {e}" : "";
        return $"{Start(Names(left))} {verb} {Names(right)} in {place}: {worst.Cause}{effect}; could bring {string.Join(", ", worst.Reason.Would)}{product}{only}. "
            + $"They need {Need(worst)}.";
    }

    // The side that stands above speaks first; then the one that breathes; then the side with fewer contents.
    private static (List<string> Left, List<string> Right) Sides(IReadOnlyList<Conflict> conflicts, Conflict worst)
    {
        var sides = conflicts.Select(c => Turned(c, worst)).ToList();
        return ([.. sides.Select(s => s.Left).Distinct(StringComparer.Ordinal)], [.. sides.Select(s => s.Right).Distinct(StringComparer.Ordinal)]);
    }

    private static (string Left, string Right) Turned(Conflict conflict, Conflict worst)
    {
        var a = conflict.A.Profile.Name;
        var b = conflict.B.Profile.Name;
        if (Nearness.IsAbove(conflict.B.Stand, conflict.A.Stand))
            return (b, a);
        if (Nearness.IsAbove(conflict.A.Stand, conflict.B.Stand))
            return (a, b);
        if (conflict.A.Profile.IsUnknown != conflict.B.Profile.IsUnknown)
            return conflict.A.Profile.IsUnknown ? (a, b) : (b, a);
        if (conflict.Reason.ByAir)
            return conflict.Reason.ABreathes ? (a, b) : (b, a);
        var turned = conflict.Reason.FamilyA == worst.Reason.FamilyB || conflict.Reason.FamilyB == worst.Reason.FamilyA;
        return turned ? (b, a) : (a, b);
    }

    private static string Stands(Conflict worst, bool above) => worst switch
    {
        { Reason.ByAir: true } => "shares the air with",
        { Has: Separation.SameTray } when above || Nearness.IsAbove(worst.A.Stand, worst.B.Stand) || Nearness.IsAbove(worst.B.Stand, worst.A.Stand) => "stands above",
        { Has: Separation.SameTray } when worst.A.Stand.Tray is { } tray && tray.Id == worst.B.Stand.Tray?.Id => "stands in one tray with",
        { Has: Separation.SameTray } => "stands beside, with no tray of its own,",
        { Has: Separation.OwnTray } => "stands in the same cabinet as",
        _ => "stands in the next cabinet to",
    };

    private static string Need(Conflict worst) => worst.Needed switch
    {
        Separation.OwnTray => "a leak-tight tray each, neither above the other",
        Separation.OwnCabinet => "a cabinet each",
        _ => "cabinets that are not next to each other, or different rooms",
    };

    private static string Names(List<string> names) => names.Count <= NamesShown
        ? Joined(names)
        : $"{string.Join(", ", names.Take(NamesShown - 1))} and {names.Count - NamesShown + 1} more";

    private static string Joined(List<string> names) => names.Count == 1 ? names[0] : $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}";

    private static string Start(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
