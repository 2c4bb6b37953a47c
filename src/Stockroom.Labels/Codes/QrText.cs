using System.Text;

namespace Stockroom.Labels.Codes;

/// <summary>What a label's code says: <c>STOCKROOM:</c> and the id, a line end, then plain words for a phone without the program.</summary>
public static class QrText
{
    public const string Prefix = "STOCKROOM:";

    /// <summary>Stands for the id where the label belongs to no container.</summary>
    public const string Sample = "SAMPLE";

    private const int ShortestWords = 12;

    /// <summary>Candidates, richest first: whole words, words cut at ever earlier word ends, the id alone.</summary>
    public static IEnumerable<string> From(string? id, string words)
    {
        var head = Prefix + (id ?? Sample);
        var plain = Plain(words);
        for (var length = plain.Length; length >= ShortestWords; length = CutBefore(plain, length))
        {
            yield return head + "\n" + plain[..length].TrimEnd(' ', ',', ';', ':', '.');
        }

        if (plain.Length is > 0 and < ShortestWords)
        {
            yield return head + "\n" + plain;
        }

        yield return head;
    }

    private static int CutBefore(string text, int length)
    {
        // Steps of some size: each step is a code to be built and measured.
        var from = Math.Max(0, Math.Min(length - 1, (length * 4) / 5));
        var space = text.LastIndexOf(' ', from);
        return space;
    }

    /// <summary>
    /// Readers disagree about the character set of bytes in a QR code; plain ASCII reads the same in all of them.
    /// </summary>
    private static string Plain(string words)
    {
        var plain = new StringBuilder(words.Length);
        foreach (var rune in words.EnumerateRunes())
        {
            plain.Append(rune.IsAscii ? ((char)rune.Value).ToString() : Ascii(rune.Value));
        }

        return string.Join(' ', plain.ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    private static string Ascii(int codePoint) => codePoint switch
    {
        >= 0x2080 and <= 0x2089 => ((char)('0' + codePoint - 0x2080)).ToString(),
        0x00B2 => "2",
        0x00B3 => "3",
        0x00B7 or 0x2219 => ".",
        0x00B0 => " deg ",
        0x00D7 => "x",
        0x2010 or 0x2011 or 0x2012 or 0x2013 or 0x2014 or 0x2212 => "-",
        0x2018 or 0x2019 or 0x2032 => "'",
        0x201C or 0x201D or 0x2033 => "\"",
        0x2026 => "...",
        0x2264 => "<=",
        0x2265 => ">=",
        0x00A0 or 0x202F or 0x2009 => " ",
        0x00B5 or 0x03BC => "u",
        0x03B1 => "alpha",
        0x03B2 => "beta",
        0x03B3 => "gamma",
        0x03B4 => "delta",
        0x03C9 => "omega",
        _ => "?",
    };
}
