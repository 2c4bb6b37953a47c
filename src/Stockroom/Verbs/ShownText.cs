using System.Buffers;
using System.Globalization;
using System.Text;

namespace Stockroom.Verbs;

/// <summary>
/// Text as it may be shown on a terminal: control characters (C0, DEL, C1), marks that steer the direction of text, signs
/// without a shape (zero-width, tags) and foreign line ends stand as \uXXXX, as JSON writes them. A document of JSON stays
/// one, with the same meaning.
/// </summary>
internal static class ShownText
{
    private static readonly SearchValues<char> Usual = SearchValues.Create([.. Enumerable.Range(' ', 0x7F - ' ').Select(n => (char)n), 'µ', '°', '·', '²', '³', 'é', 'ö', 'ä', 'ü']);

    /// <summary>True if a character shows nothing by itself but does something.</summary>
    public static bool IsHidden(char c) => c is (< ' ' or > '~') && CharUnicodeInfo.GetUnicodeCategory(c) is
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.Surrogate;

    public static bool IsHidden(Rune r) => r.Value is (< ' ' or > '~') && Rune.GetUnicodeCategory(r) is
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;

    /// <summary>The text with what is hidden written out.</summary>
    /// <param name="text">Any.</param>
    /// <param name="oneLine">True where line feeds come from what is shown and not from who shows it.</param>
    public static string Of(string text, bool oneLine)
    {
        if (text.AsSpan().IndexOfAnyExcept(Usual) < 0)
            return text;
        var shown = new StringBuilder(text.Length + 16);
        var rest = text.AsSpan();
        while (!rest.IsEmpty)
        {
            var isWhole = Rune.DecodeFromUtf16(rest, out var rune, out var length) == OperationStatus.Done;
            if (isWhole && (!IsHidden(rune) || rune.Value == '\t' || (!oneLine && rune.Value is '\n' or '\r')))
                shown.Append(rest[..length]);
            else
                Escape(shown, rest[..length]);
            rest = rest[length..];
        }

        return shown.ToString();
    }

    private static void Escape(StringBuilder shown, ReadOnlySpan<char> hidden)
    {
        foreach (var c in hidden)
            shown.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}");
    }
}
