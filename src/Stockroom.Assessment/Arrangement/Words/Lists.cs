namespace Stockroom.Assessment.Arrangement.Words;

/// <summary>Lists in a sentence.</summary>
internal static class Lists
{
    private const int NamesShown = 3;

    public static string Or(IReadOnlyList<string> words) => Joined(words, "or");

    public static string And(IReadOnlyList<string> words) => Joined(words, "and");

    /// <summary>A few names and how many more; a name that stands twice is told once.</summary>
    public static string Few(IEnumerable<string> names)
    {
        List<string> distinct = [.. names.Distinct(StringComparer.Ordinal)];
        return distinct.Count <= NamesShown + 1 ? And(distinct) : $"{string.Join(", ", distinct.Take(NamesShown))} and {distinct.Count - NamesShown} more";
    }

    public static string Start(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private static string Joined(IReadOnlyList<string> words, string last) => words.Count switch
    {
        0 => "",
        1 => words[0],
        _ => $"{string.Join(", ", words.Take(words.Count - 1))} {last} {words[^1]}",
    };
}
