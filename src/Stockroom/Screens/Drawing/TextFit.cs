using System.Text;
using Stockroom.Verbs;
using Terminal.Gui.Text;

namespace Stockroom.Screens.Drawing;

/// <summary>Makes text fit a number of columns. Control characters become blanks, so that no text can disturb the screen.</summary>
internal static class TextFit
{
    /// <summary>Columns that a text takes; a wide character takes two.</summary>
    public static int Columns(string text) => System.Text.Ascii.IsValid(text) ? text.Length : text.GetColumns();

    /// <summary>Without control characters, marks that steer the direction of text, and signs without a width of their own.</summary>
    public static string Clean(string text) =>
        text.Any(ShownText.IsHidden) ? string.Concat(text.EnumerateRunes().Select(r => ShownText.IsHidden(r) ? " " : r.ToString())) : text;

    /// <summary>At most so many columns; a text that is longer ends with the sign for "cut".</summary>
    public static string Cut(string text, int columns, string cut)
    {
        if (columns <= 0) return "";
        if (Columns(text) <= columns) return text;
        int room = columns - Columns(cut);
        return room <= 0 ? Start(cut, columns) : Start(text, room) + cut;
    }

    /// <summary>At most so many columns; a text that is longer loses its beginning, for paths whose end says most.</summary>
    public static string CutFront(string text, int columns, string cut)
    {
        if (columns <= 0) return "";
        if (Columns(text) <= columns) return text;
        int room = columns - Columns(cut);
        if (room <= 0) return Start(cut, columns);
        int from = text.Length;
        while (from > 0 && Columns(text[(from - 1)..]) <= room) from--;
        if (from < text.Length && char.IsLowSurrogate(text[from])) from++;
        return cut + text[from..];
    }

    /// <summary>A path of places: whole steps are left out at the front, since the end says most.</summary>
    public static string CutPath(string path, int columns, string cut)
    {
        if (Columns(path) <= columns) return path;
        string[] steps = path.Split(" > ");
        for (int from = 1; from < steps.Length; from++)
        {
            string rest = cut + " " + string.Join(" > ", steps[from..]);
            if (Columns(rest) <= columns) return rest;
        }

        return CutFront(path, columns, cut);
    }

    /// <summary>Exactly so many columns, blanks at the end.</summary>
    public static string Pad(string text, int columns, string cut)
    {
        string fitted = Cut(text, columns, cut);
        return fitted + new string(' ', Math.Max(0, columns - Columns(fitted)));
    }

    /// <summary>Broken at blanks into lines of at most so many columns; a longer word is broken where it must.</summary>
    public static IReadOnlyList<string> Wrap(string text, int columns)
    {
        if (columns <= 0) return [];
        var lines = new List<string>();
        var line = new StringBuilder();
        int used = 0;
        foreach (string word in Clean(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string rest = word;
            if (used > 0 && used + 1 + Columns(rest) > columns) EndLine();
            while (Columns(rest) > columns)
            {
                string part = Start(rest, columns);
                if (part.Length == 0) break;
                lines.Add(part);
                rest = rest[part.Length..];
            }

            if (used > 0)
            {
                line.Append(' ');
                used++;
            }

            line.Append(rest);
            used += Columns(rest);
        }

        if (used > 0 || lines.Count == 0) EndLine();
        return lines;

        void EndLine()
        {
            lines.Add(line.ToString());
            line.Clear();
            used = 0;
        }
    }

    private static string Start(string text, int columns)
    {
        if (System.Text.Ascii.IsValid(text)) return text[..Math.Min(columns, text.Length)];
        int used = 0;
        int taken = 0;
        foreach (string grapheme in Graphemes(text))
        {
            int width = grapheme.GetColumns();
            if (used + width > columns) break;
            used += width;
            taken += grapheme.Length;
        }

        return text[..taken];
    }

    private static IEnumerable<string> Graphemes(string text)
    {
        var elements = System.Globalization.StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext()) yield return elements.GetTextElement();
    }
}
