using Stockroom.Themes;

namespace Stockroom.Screens.Drawing;

/// <summary>A rule across the screen that can carry a title, and a few words at its end.</summary>
internal sealed class RulePane(Theme theme) : LinePane(theme)
{
    private string _title = "";
    private string _end = "";

    public void Name(string title, string end = "")
    {
        _title = title;
        _end = end;
        SetNeedsDraw();
    }

    protected override Line Compose(int row, int columns)
    {
        if (_title.Length == 0) return Line.Of(Rule(columns), Tone.Quiet);
        string end = _end.Length == 0 ? "" : $" {_end} {Rule(2)}";
        string title = TextFit.Cut(Theme.Show(TextFit.Clean(_title)), columns - 6 - end.Length, Theme.Glyphs.Cut);
        string between = Rule(columns - 4 - end.Length - TextFit.Columns(title));
        return new Line([new(Rule(2) + " ", Tone.Quiet), new(title, Tone.Heading), new($" {between}{end}", Tone.Quiet)]);
    }

    private string Rule(int columns) => string.Concat(Enumerable.Repeat(Theme.Glyphs.Rule, Math.Max(0, columns)));
}
