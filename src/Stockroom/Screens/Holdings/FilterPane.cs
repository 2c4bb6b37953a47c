using Stockroom.Screens.Drawing;
using Stockroom.Themes;

namespace Stockroom.Screens.Holdings;

/// <summary>The row in which the filter is typed, with the number of rows that it leaves.</summary>
internal sealed class FilterPane(Theme theme) : LinePane(theme)
{
    private const string Label = " Find  ";
    private const int Widest = 40;

    private string _text = "";
    private string _count = "";

    /// <summary>Column at which the next character will stand.</summary>
    public int CaretColumn => Label.Length + Math.Min(Room - 1, TextFit.Columns(_text));

    public void Show(string text, int found, int all)
    {
        _text = text;
        _count = found == all ? string.Create(null, $"{all} containers") : string.Create(null, $"{found} of {all} containers");
        SetNeedsDraw();
    }

    protected override Line Compose(int row, int columns)
    {
        string entry = _text.Length == 0 ? "type a name, a formula, an id or a place" : TextFit.CutFront(_text, Room - 1, Theme.Glyphs.Cut);
        Tone tone = _text.Length == 0 ? Tone.Quiet : Tone.Entry;
        int gap = columns - Label.Length - Room - TextFit.Columns(_count) - 1;
        return new Line(
        [
            new(Label, Tone.Heading),
            new(TextFit.Pad(entry, Room, Theme.Glyphs.Cut), tone),
            new(new string(' ', Math.Max(1, gap)) + _count, Tone.Quiet),
        ]);
    }

    private int Room => Math.Clamp(Viewport.Width - Label.Length - 28, 10, Widest);
}
