using Stockroom.Themes;
using Stockroom.Views;

namespace Stockroom.Screens.Drawing;

/// <summary>Lays a card out: headings, labels in a column, values wrapped beside them, a sign in the margin for what needs attention.</summary>
internal static class CardLines
{
    private const int Margin = 3;
    private const int WidestLabel = 18;

    public static IReadOnlyList<Line> Of(Card card, int columns)
    {
        var lines = new List<Line>();
        int widest = card.Sections.SelectMany(s => s.Lines).Select(l => TextFit.Columns(l.Label)).DefaultIfEmpty(0).Max();
        int label = Math.Min(widest, Math.Min(WidestLabel, Math.Max(6, columns / 3)));
        foreach (CardSection section in card.Sections)
        {
            if (lines.Count > 0) lines.Add(Line.Blank);
            if (section.Heading.Length > 0) lines.Add(Line.Of(" " + section.Heading, Tone.Heading));
            foreach (CardLine line in section.Lines) Add(lines, line, label, columns);
        }

        return lines;
    }

    /// <summary>The sign in the margin: two for danger, one for a warning; the key sheet explains them.</summary>
    public static string Sign(Attention weight) => weight switch
    {
        Attention.Danger => "!! ",
        Attention.Warning => " ! ",
        Attention.Notice => " * ",
        _ => "   ",
    };

    private static void Add(List<Line> lines, CardLine line, int label, int columns)
    {
        int indent = label == 0 ? 0 : label + 2;
        Tone tone = Theme.ToneOf(line.Weight);
        string sign = Sign(line.Weight);
        bool longLabel = TextFit.Columns(line.Label) > label;
        if (longLabel)
        {
            lines.Add(new Line([new(sign, tone), new(line.Label, Tone.Quiet)]));
            sign = Sign(Attention.None);
        }

        foreach (string part in TextFit.Wrap(line.Value, Math.Max(8, columns - Margin - indent - 1)))
        {
            string head = longLabel ? "" : line.Label;
            lines.Add(new Line([new(sign, tone), new(Beside(head, indent), Tone.Quiet), new(part, tone)]));
            sign = Sign(Attention.None);
            line = line with { Label = "" };
        }
    }

    private static string Beside(string label, int indent) => label + new string(' ', Math.Max(0, indent - TextFit.Columns(label)));
}
