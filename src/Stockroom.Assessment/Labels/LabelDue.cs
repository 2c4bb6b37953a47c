using System.Globalization;
using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Rounds;
using Stockroom.Book.Containers;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Assessment.Labels;

/// <summary>Which containers carry a label that no longer says what is true.</summary>
public static class LabelDue
{
    private const string Source = "CLP Art. 30(1) for the hazards; common practice for the rest";

    /// <summary>True where a label was never printed, or is no longer true.</summary>
    public static bool NeedsOne(Holding holding, StockFacts facts) => holding.Container.LabelPrintedOn is null || Changes(holding, facts).Count > 0;

    /// <summary>The new label that is due; null where the printed one is true, where none was printed, or where nobody may touch the container.</summary>
    public static DueItem? Of(Holding holding, StockFacts facts)
    {
        if (holding.Container is not { LabelPrintedOn: { } printed, HandsOff: null })
            return null;
        var changes = Changes(holding, facts);
        return changes.Count == 0
            ? null
            : new DueItem(holding.Id, "print a new label", printed, $"since its label was printed on {Iso(printed)}: {string.Join("; ", changes)}", Source);
    }

    /// <summary>What has changed since the label was printed, in words.</summary>
    public static IReadOnlyList<string> Changes(Holding holding, StockFacts facts)
    {
        var container = holding.Container;
        if (container.LabelPrintedOn is not { } printed)
            return [];

        // An older book kept the day alone.
        if (container.LabelSays is not { } said)
            return container.OpenedOn is { } opened && opened > printed ? [$"opened on {Iso(opened)}"] : [];
        var rules = container.LabelRules is { } word && RuleSets.Words.TryGetValue(word, out var known) ? known : RuleSet.Eu;
        var now = LabelSayings.Of(holding, facts, rules).ToDictionary(s => s.Part, s => s.Text, StringComparer.Ordinal);
        return [.. said.Where(s => now.TryGetValue(s.Part, out var text) && text != s.Text).Select(s => Change(s, now[s.Part]))];
    }

    private static string Change(LabelSaying said, string now) => said.Part switch
    {
        LabelSayings.Name => $"renamed from {said.Text} to {now}",
        LabelSayings.Composition => $"composition changed from {Or(said.Text, "none stated")} to {Or(now, "none stated")}",
        LabelSayings.Hazards => $"reclassified: {Difference(said.Text, now)}",
        LabelSayings.Opened => now.Length > 0 ? $"opened on {now}" : "no longer counted as opened",
        LabelSayings.Sealed => now.Length > 0 ? $"sealed on {now}" : "no longer counted as sealed",
        LabelSayings.Place => $"moved from {said.Text} to {now}",
        _ => $"{said.Part} changed from {Or(said.Text, "none")} to {Or(now, "none")}",
    };

    private static string Difference(string said, string now)
    {
        var (before, after) = (said.Split(' ', StringSplitOptions.RemoveEmptyEntries), now.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return string.Join(", ", after.Except(before).Select(c => $"{c} is new").Concat(before.Except(after).Select(c => $"{c} is gone")));
    }

    private static string Or(string text, string none) => text.Length > 0 ? text : none;

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
