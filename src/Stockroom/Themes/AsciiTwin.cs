using System.Text;

namespace Stockroom.Themes;

/// <summary>Writes a text in ASCII: signs by their usual twin, letters without their marks, the rest as a question mark.</summary>
internal static class AsciiTwin
{
    /// <summary>Each row begins with the twin of all that follow.</summary>
    private static readonly string[] Marked =
    [
        "aàáâãäåāăą", "cçćčĉċ", "dđďð", "eèéêëēęěė", "gğģĝġ", "hĥħ", "iìíîïīįı", "jĵ", "kķ", "lłľĺļ", "nñńňņ", "oòóôõöøōő",
        "rŕř", "sśšşș", "tťțţ", "uùúûüūůűų", "wŵ", "yýÿŷ", "zźžż",
        "AÀÁÂÃÄÅĀĂĄ", "CÇĆČĈĊ", "DĐĎÐ", "EÈÉÊËĒĘĚĖ", "GĞĢĜĠ", "HĤĦ", "IÌÍÎÏĪĮİ", "JĴ", "KĶ", "LŁĽĹĻ", "NÑŃŇŅ", "OÒÓÔÕÖØŌŐ",
        "RŔŘ", "SŚŠŞȘ", "TŤȚŢ", "UÙÚÛÜŪŮŰŲ", "WŴ", "YÝŸŶ", "ZŹŽŻ",
        "0⁰₀", "1¹₁", "2²₂", "3³₃", "4⁴₄", "5⁵₅", "6⁶₆", "7⁷₇", "8⁸₈", "9⁹₉", "+⁺₊", "-⁻₋", "(₍⁽", ")₎⁾",
    ];

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
        'æ' => "ae",
        'Æ' => "AE",
        'œ' => "oe",
        'Œ' => "OE",
        '\u00A0' or '\u202F' or '\u2009' => " ",
        _ => WithoutMarks(rune),
    };

    /// <summary>The letter without its mark, the digit on the line. The program has no tables of its own for that: it is culture-free.</summary>
    private static string WithoutMarks(Rune rune)
    {
        string text = rune.ToString();
        foreach (string row in Marked)
            if (row.Contains(text, StringComparison.Ordinal)) return row[..1];
        return "?";
    }
}
