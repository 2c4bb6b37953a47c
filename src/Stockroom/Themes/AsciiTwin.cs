using System.Globalization;
using System.Text;

namespace Stockroom.Themes;

/// <summary>Writes a text in ASCII: signs by their usual twin, letters without their marks, the rest as a question mark.</summary>
internal static class AsciiTwin
{
    public static string Of(string text)
    {
        if (System.Text.Ascii.IsValid(text)) return text;
        var twin = new StringBuilder(text.Length + 8);
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (rune.IsAscii) twin.Append(rune.ToString());
            else twin.Append(OfRune(rune));
        }

        return twin.ToString();
    }

    private static string OfRune(Rune rune) => rune.Value switch
    {
        '°' => "deg ",
        'µ' or 'μ' => "u",
        '·' or '•' => "-",
        '×' => "x",
        '±' => "+-",
        '≤' => "<=",
        '≥' => ">=",
        '→' => "->",
        '−' or '–' or '—' or '\u2011' => "-",
        '…' => "...",
        '“' or '”' or '„' => "\"",
        '‘' or '’' => "'",
        'ß' => "ss",
        'ø' => "o",
        'Ø' => "O",
        'æ' => "ae",
        'Æ' => "AE",
        'œ' => "oe",
        'ł' => "l",
        'Ł' => "L",
        '\u00A0' or '\u202F' or '\u2009' => " ",
        _ => WithoutMarks(rune),
    };

    /// <summary>The compatibility form without its marks: é becomes e, ₂ and ² become 2.</summary>
    private static string WithoutMarks(Rune rune)
    {
        string apart = rune.ToString().Normalize(NormalizationForm.FormKD);
        var kept = new StringBuilder();
        foreach (char part in apart)
        {
            if (char.IsAscii(part)) kept.Append(part);
            else if (char.GetUnicodeCategory(part) != UnicodeCategory.NonSpacingMark) return "?";
        }

        return kept.Length == 0 ? "?" : kept.ToString();
    }
}
