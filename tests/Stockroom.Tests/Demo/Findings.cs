using System.Text.Json;
using Stockroom.Tests.Verbs;

namespace Stockroom.Tests.Demo;

/// <summary>What "today" finds wrong and due, in words that name the container by its content and place.</summary>
internal sealed record Findings(IReadOnlyList<Finding> Wrong, IReadOnlyList<Finding> Due)
{
    public static Findings Of(Keeper keeper)
    {
        var containers = keeper.Run("list", "--json").Done().Json.GetProperty("containers").EnumerateArray()
            .ToDictionary(c => c.GetProperty("id").GetString()!, c => $"{c.GetProperty("content").GetString()} in {c.GetProperty("place").GetString()}", StringComparer.Ordinal);
        var today = keeper.Run("today", "--json").Done().Json;
        return new Findings(
            [.. today.GetProperty("wrong").EnumerateArray().Select(w => Read(w, "kind", containers, [.. w.GetProperty("ids").EnumerateArray().Select(i => i.GetString()!)]))],
            [.. today.GetProperty("due").EnumerateArray().Select(d => Read(d, "what", containers, [d.GetProperty("id").GetString()!]))]);
    }

    /// <summary>Every finding by its kind, rule and the container to act on, which stays the same when others come and go.</summary>
    public IReadOnlyList<string> Keys => [.. Wrong.Concat(Due).Select(f => f.Key).Order(StringComparer.Ordinal)];

    private static Finding Read(JsonElement item, string kind, Dictionary<string, string> containers, IReadOnlyList<string> ids)
    {
        var (sort, because) = (item.GetProperty(kind).GetString()!, item.GetProperty("because").GetString()!);
        return new Finding($"{sort}: {containers[ids[0]]}", $"{sort}: {ids[0]}{(sort == "neighbours" ? ": " + because : "")}", ids, because, item.GetProperty("source").GetString()!);
    }
}

internal sealed record Finding(string Words, string Key, IReadOnlyList<string> Ids, string Because, string Source);
