using System.Globalization;
using Stockroom.Book.Containers;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Rounds;

/// <summary>Which looks and tests are due on a day, by the round rules and the container's own history.</summary>
public static class DueChecks
{
    /// <summary>Everything due for one container on or before a day. A container marked hands off is never asked to be handled.</summary>
    public static IEnumerable<DueItem> For(Container container, Content content, RoundRules rules, DateOnly today)
    {
        if (container.IsRetired || container.HandsOff is not null || content.IsUnknown)
            yield break;
        foreach (var rule in rules.For(content))
        {
            if (DayOf(rule, container) is not { } due || due.Day > today)
                continue;
            var counted = due.Last is { } tested
                ? $"last done on {Iso(tested)}, again after {rule.RepeatDays} days"
                : $"{(rule.From == CountFrom.Opened ? "opened" : "received")} on {Iso(due.Start)}, due {rule.FirstDays} days later";
            yield return new DueItem(container.Id, rule.What, due.Day, $"{rule.Because}; {counted}. {Sentence(rule.AtLimit)}", rule.Provenance.ToString());
        }

        if (CoverBelowMinimum(container, content, rules) is { } thin)
            yield return thin;
    }

    /// <summary>The day on which a rule falls due for a container; null where the rule is not meant for it.</summary>
    internal static (DateOnly Day, DateOnly Start, DateOnly? Last)? DayOf(RoundRule rule, Container container)
    {
        if ((rule.From == CountFrom.Opened && container.OpenedOn is null) || (rule.From == CountFrom.Unopened && container.OpenedOn is not null))
            return null;
        var start = rule.From == CountFrom.Opened ? container.OpenedOn!.Value : container.ReceivedOn;
        var last = LastReset(container, rule, start);
        return (last is { } day ? day.AddDays(rule.RepeatDays) : start.AddDays(rule.FirstDays), start, last);
    }

    // The last time the test was made since the count began; an older one says nothing of this opening.
    private static DateOnly? LastReset(Container container, RoundRule rule, DateOnly start) =>
        container.LastTested.TryGetValue(rule.ResetBy, out var test) && test.On >= start ? test.On : null;

    private static DueItem? CoverBelowMinimum(Container container, Content content, RoundRules rules)
    {
        if (container.Cover is not { DepthMillimetres: { } depth } cover)
            return null;
        var minimum = rules.CoverMinimums.FirstOrDefault(m => m.Cover == cover.Name && (m.Subject == content.Name || m.Subject == content.Pure?.Name));
        if (minimum is null || depth >= minimum.MinimumMillimetres)
            return null;
        return new DueItem(
            container.Id,
            $"top up the {cover.Name} cover",
            cover.DepthOn,
            $"{depth.ToString("0.#", CultureInfo.InvariantCulture)} mm of {cover.Name} stood over it on {Iso(cover.DepthOn)}; at least {minimum.MinimumMillimetres.ToString("0.#", CultureInfo.InvariantCulture)} mm are needed: {minimum.Because}",
            minimum.Provenance.ToString());
    }

    private static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
