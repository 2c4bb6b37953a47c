using System.Buffers;
using System.Globalization;

namespace Stockroom.Verbs;

/// <summary>
/// Words as typed hold no control characters: booked once, they would be printed on every list, label and terminal after.
/// A scanned code is let through, whose id is followed by a line end and plain words.
/// </summary>
internal static class PlainWords
{
    private static readonly SearchValues<char> Controls = SearchValues.Create([.. Enumerable.Range(0, 0xA0).Select(n => (char)n).Where(char.IsControl)]);

    /// <exception cref="RefusedException">A word holds a control character.</exception>
    public static void Check(IEnumerable<string> words)
    {
        foreach (var word in words)
        {
            var at = word.AsSpan().IndexOfAny(Controls);
            if (at < 0 || word.StartsWith("STOCKROOM:", StringComparison.OrdinalIgnoreCase))
                continue;
            var shown = string.Concat(word.Select(c => char.IsControl(c) ? '?' : c));
            throw RefusedException.Words(string.Create(CultureInfo.InvariantCulture,
                $"'{shown}' holds the control character U+{(int)word[at]:X4} (shown as ?); write it without, on one line"));
        }
    }
}
