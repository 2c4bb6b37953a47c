using Stockroom.Assessment.Neighbours;

namespace Stockroom.Assessment.Arrangement.Words;

/// <summary>What stands against a thing, in one sentence: the worst cause, with all whom it concerns.</summary>
internal static class DiscordSentence
{
    /// <summary>Who stands how to whom, why not, and what they need.</summary>
    /// <param name="label">What the keeper calls the thing that is spoken of.</param>
    /// <param name="place">The name of the place it stands on; empty where the reader knows.</param>
    /// <param name="discords">At least one.</param>
    public static string Of(string label, string place, IReadOnlyList<Discord> discords)
    {
        var worst = Worst(discords);
        var shared = discords.Where(d => d.Cause == worst.Cause && d.Relation == worst.Relation).ToList();
        var more = discords.Select(d => d.Other.Label).Except(shared.Select(d => d.Other.Label), StringComparer.Ordinal).ToList();
        var also = more.Count == 0 ? "" : $" Also against it: {Lists.Few(more)}.";
        var where = place.Length == 0 ? "" : $", on {place},";
        return $"{Lists.Start(label)}{where} {worst.Relation} {Lists.Few(shared.Select(d => d.Other.Label))}: {worst.Cause}{worst.Would}; they need {Need(worst.Needed)}.{also}";
    }

    /// <summary>The one that weighs most, by what it needs and what it could bring; of equals the cause that concerns most.</summary>
    public static Discord Worst(IReadOnlyList<Discord> discords)
    {
        var counts = discords.CountBy(d => d.Cause).ToDictionary(c => c.Key, c => c.Value, StringComparer.Ordinal);
        return discords
            .OrderByDescending(d => d.Needed)
            .ThenBy(d => d.ByAir)
            .ThenBy(d => d.Rank)
            .ThenByDescending(d => counts[d.Cause])
            .ThenBy(d => d.Cause, StringComparer.Ordinal)
            .ThenBy(d => d.Other.Key, StringComparer.Ordinal)
            .First();
    }

    public static string Need(Separation separation) => separation switch
    {
        Separation.OwnTray => "a leak-tight tray each, neither above the other",
        Separation.OwnCabinet => "a cabinet each",
        _ => "cabinets that are not next to each other, or different rooms",
    };
}
