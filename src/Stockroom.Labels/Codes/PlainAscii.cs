using System.Text;

namespace Stockroom.Labels.Codes;

/// <summary>Writes text with the letters of ASCII: readers disagree about the character set of bytes in a QR code, but not about these.</summary>
internal static class PlainAscii
{
    /// <summary>Base letters of U+00C0 to U+017F (Latin-1 letters and Latin Extended-A), in order.</summary>
    private const string BaseLetters =
        "AAAAAAACEEEEIIIIDNOOOOOxOUUUUYTsaaaaaaaceeeeiiiidnooooo/ouuuuyty"
        + "AaAaAaCcCcCcCcDdDdEeEeEeEeEeGgGgGgGgHhHhIiIiIiIiIiIiJjKkkLlLlLlL"
        + "lLlNnNnNnnNnOoOoOoOoRrRrRrSsSsSsSsTtTtTtUuUuUuUuUuUuWwYyYZzZzZzs";

    private const int FirstLetter = 0xC0;

    public static string Of(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            plain.Append(rune.IsAscii ? ((char)rune.Value).ToString() : InPlainLetters(rune.Value));
        }

        return string.Join(' ', plain.ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    private static string InPlainLetters(int codePoint) => codePoint switch
    {
        0xDF => "ss",
        0xC6 => "Ae",
        0xE6 => "ae",
        0xDE => "Th",
        0xFE => "th",
        >= FirstLetter and <= 0x017F => BaseLetters[codePoint - FirstLetter].ToString(),
        >= 0x0300 and <= 0x036F => string.Empty, // accents written behind their letters
        >= 0x2080 and <= 0x2089 => ((char)('0' + codePoint - 0x2080)).ToString(),
        0xB2 => "2",
        0xB3 => "3",
        0xB7 => ".",
        0xB0 => " deg ",
        0x2012 or 0x2013 or 0x2014 or 0x2212 => "-",
        0x2018 or 0x2019 or 0x2032 => "'",
        0x201C or 0x201D or 0x2033 => "\"",
        0x2026 => "...",
        0x2264 => "<=",
        0x2265 => ">=",
        0xB5 or 0x03BC => "u",
        0x03B1 => "alpha",
        0x03B2 => "beta",
        0x03B3 => "gamma",
        0x03B4 => "delta",
        0x03C9 => "omega",
        _ => "?",
    };
}
