using Stockroom.Themes;

namespace Stockroom.Screens.Drawing;

/// <summary>A rule across the screen that can carry a title, or a divider down it.</summary>
internal sealed class RulePane(Theme theme) : LinePane(theme)
{
    private string _title = "";

    public void Name(string title)
    {
        _title = title;
        SetNeedsDraw();
    }

    protected override Line Compose(int row, int columns)
    {
        string rule = Theme.Glyphs.Rule;
        if (columns == 1) return Line.Of(Theme.Glyphs.Divider, Tone.Quiet);
        if (_title.Length == 0) return Line.Of(Repeat(rule, columns), Tone.Quiet);
        string title = TextFit.Cut(Theme.Show(TextFit.Clean(_title)), columns - 6, Theme.Glyphs.Cut);
        return new Line(
        [
            new(Repeat(rule, 2) + " ", Tone.Quiet),
            new(title, Tone.Heading),
            new(" " + Repeat(rule, columns - 4 - TextFit.Columns(title)), Tone.Quiet),
        ]);
    }

    private static string Repeat(string sign, int times) => string.Concat(Enumerable.Repeat(sign, Math.Max(0, times)));
}
