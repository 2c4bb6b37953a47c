namespace Stockroom.Book.Encoding;

/// <summary>
/// How long a text may be when it is booked, in characters: a name 300, running text 2,000. Older books may hold longer
/// ones; they stay readable.
/// </summary>
public static class TextLimits
{
    public const int Name = 300;

    public const int Running = 2_000;

    private static readonly HashSet<string> RunningTexts = new(StringComparer.Ordinal)
    {
        "note", "forced", "reason", "seen", "result", "method", "origin", "source", "synonyms", "hazards", "value", "quantity",
    };

    /// <summary>Most characters of the text of a member ("content", "lot.note"); a path counts by its last step.</summary>
    public static int Of(string member) => RunningTexts.Contains(member[(member.LastIndexOf('.') + 1)..]) ? Running : Name;

    /// <summary>Refuses a text that is too long to be booked.</summary>
    /// <exception cref="BookRefusal">It is; the line says by how much.</exception>
    internal static void Check(string member, string text)
    {
        if (text.Length > Of(member))
            throw new BookRefusal($"the text of '{member}' has {text.Length} characters ('{Beginning(text)}...'); at most {Of(member)} are booked: shorten it{(Of(member) == Name ? ", or put it in a note" : "")}");
    }

    private static string Beginning(string text) => string.Concat(text.Take(20).Select(c => char.IsControl(c) || char.IsSurrogate(c) ? ' ' : c));
}
