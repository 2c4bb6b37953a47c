using System.Text;

namespace Stockroom.Labels.Codes;

/// <summary>What a label's code says: <c>STOCKROOM:</c> and the id, a line end, then plain words for a phone without the program.</summary>
public static class QrText
{
    public const string Prefix = "STOCKROOM:";

    /// <summary>Stands for the id where the label belongs to no container.</summary>
    public const string Sample = "SAMPLE";

    private const int LongestName = 60;
    private static readonly int[] ShorterNames = [40, 26, 16];

    /// <summary>Whole texts, richest first: id with words, with ever fewer words, the id alone.</summary>
    public static IEnumerable<string> From(string? id, IReadOnlyList<string> words)
    {
        var head = Prefix + (id ?? Sample);
        foreach (var text in words.Where(w => w.Length > 0))
        {
            yield return head + "\n" + text;
        }

        yield return head;
    }

    /// <summary>What it is and its worst hazard in plain ASCII, richest first: the hazard is shortened to its signal word before it is left out.</summary>
    /// <param name="name">Name of the content.</param>
    /// <param name="extra">Warnings of the house.</param>
    /// <param name="signalWord">Or null.</param>
    /// <param name="worst">The worst hazard's statement, or null.</param>
    public static IReadOnlyList<string> Words(string name, IReadOnlyList<string> extra, string? signalWord, string? worst)
    {
        var warnings = string.Join(", ", extra);
        var hazard = Join(": ", signalWord, worst);
        return
        [
            .. new[]
            {
                Join(". ", Cut(name, LongestName), warnings, hazard),
                Join(". ", Cut(name, ShorterNames[0]), warnings, hazard),
                Join(". ", Cut(name, ShorterNames[1]), warnings, hazard),
                Join(". ", Cut(name, ShorterNames[0]), warnings, signalWord),
                Join(". ", Cut(name, ShorterNames[1]), warnings, signalWord),
                Join(". ", Cut(name, ShorterNames[2]), warnings, signalWord),
            }.Select(Ascii).Distinct().OrderByDescending(w => w.Length),
        ];
    }

    private static string Join(string between, params string?[] parts) =>
        string.Join(between, parts.Where(p => !string.IsNullOrWhiteSpace(p))).Replace("....", "...");

    private static string Cut(string text, int length)
    {
        if (text.Length <= length)
        {
            return text;
        }

        var space = text.LastIndexOf(' ', length - 3);
        var at = space > length / 2 ? space : length - 3;
        return text[..(char.IsHighSurrogate(text[at - 1]) ? at - 1 : at)].TrimEnd(' ', ',', '-') + "...";
    }

    /// <summary>Readers disagree about the character set of bytes in a QR code; plain ASCII reads the same in all of them.</summary>
    private static string Ascii(string words)
    {
        var plain = new StringBuilder(words.Length);
        foreach (var rune in words.Normalize(NormalizationForm.FormD).EnumerateRunes())
        {
            plain.Append(rune.IsAscii ? ((char)rune.Value).ToString() : InPlainLetters(rune.Value));
        }

        return string.Join(' ', plain.ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    private static string InPlainLetters(int codePoint) => codePoint switch
    {
        >= 0x0300 and <= 0x036F => string.Empty, // accents, once taken off their letters
        >= 0x2080 and <= 0x2089 => ((char)('0' + codePoint - 0x2080)).ToString(),
        0x00B2 => "2",
        0x00B3 => "3",
        0x00B7 => ".",
        0x00B0 => " deg ",
        0x00D7 => "x",
        0x2012 or 0x2013 or 0x2014 or 0x2212 => "-",
        0x2018 or 0x2019 or 0x2032 => "'",
        0x201C or 0x201D or 0x2033 => "\"",
        0x2026 => "...",
        0x2264 => "<=",
        0x2265 => ">=",
        0x00B5 or 0x03BC => "u",
        0x03B1 => "alpha",
        0x03B2 => "beta",
        0x03B3 => "gamma",
        0x03B4 => "delta",
        0x03C9 => "omega",
        0x00DF => "ss",
        0x00E6 => "ae",
        0x00C6 => "Ae",
        0x00F8 => "o",
        0x00D8 => "O",
        0x0142 => "l",
        0x0141 => "L",
        _ => "?",
    };
}
