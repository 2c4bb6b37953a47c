using System.Globalization;
using System.Text;
using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Layout;

/// <summary>Makes text printable: no control characters, single spaces, only characters that the font has.</summary>
internal sealed class CleanText
{
    private readonly SortedDictionary<int, string> _replaced = [];

    /// <summary>A line for each character that was replaced by another.</summary>
    public IEnumerable<string> Notes => _replaced.Select(r =>
        $"the font has no character '{char.ConvertFromUtf32(r.Key)}' (U+{r.Key:X4}); printed as '{r.Value}'");

    public string Of(string? text)
    {
        if (IsPlain(text))
        {
            return text!;
        }

        var clean = new StringBuilder();
        foreach (var rune in (text ?? string.Empty).EnumerateRunes())
        {
            switch (Rune.GetUnicodeCategory(rune))
            {
                case UnicodeCategory.Control:
                case UnicodeCategory.LineSeparator:
                case UnicodeCategory.ParagraphSeparator:
                case UnicodeCategory.SpaceSeparator:
                    clean.Append(' ');
                    break;
                case UnicodeCategory.Format:
                    break; // directions, joiners, soft hyphens: they have no shape of their own
                default:
                    clean.Append(Printable(rune));
                    break;
            }
        }

        return string.Join(' ', clean.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>Letters, figures and signs of ASCII with single spaces between: the font has them all and nothing needs a change.</summary>
    private static bool IsPlain(string? text)
    {
        var before = ' ';
        foreach (var c in text ?? " ")
        {
            if (c is < ' ' or > '~' || (c == ' ' && before == ' '))
            {
                return false;
            }

            before = c;
        }

        return before != ' ';
    }

    private string Printable(Rune rune)
    {
        if (LabelFont.Of(Face.Regular).Has(rune.Value) && LabelFont.Of(Face.Bold).Has(rune.Value))
        {
            return rune.ToString();
        }

        var instead = rune.Value switch
        {
            0x2010 or 0x2011 or 0x2043 => "-",
            0x2219 or 0x22C5 or 0x2027 => "·",
            0x2192 => "->",
            0x2190 => "<-",
            0x21CC => "<=>",
            0x2103 => "°C",
            _ => "?",
        };

        // A true twin of the character (another code for the same shape) needs no remark.
        if (instead is "?" or "->" or "<-" or "<=>")
        {
            _replaced[rune.Value] = instead;
        }

        return instead;
    }
}
