using System.Text;

namespace Stockroom.Exports;

/// <summary>
/// The lines of an iCalendar as RFC 5545, 3.1 wants them: at most 75 octets without the line end, none of which parts a
/// character, and CRLF at each end. The library folds by characters, which outside ASCII are more octets.
/// </summary>
internal static class ContentLines
{
    private const int MostOctets = 75;

    public static string Folded(string text)
    {
        var lines = text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace("\n ", "", StringComparison.Ordinal).Replace("\n\t", "", StringComparison.Ordinal);
        var folded = new StringBuilder(text.Length + 64);
        foreach (var line in lines.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            var octets = 0;
            foreach (var rune in line.EnumerateRunes())
            {
                if (octets + rune.Utf8SequenceLength > MostOctets)
                {
                    folded.Append("\r\n ");
                    octets = 1;
                }

                folded.Append(rune.ToString());
                octets += rune.Utf8SequenceLength;
            }

            folded.Append("\r\n");
        }

        return folded.ToString();
    }
}
