using Stockroom.Themes;
using Terminal.Gui.Input;

namespace Stockroom.Screens.Drawing;

/// <summary>Text that is laid out for the width there is, and scrolls.</summary>
internal sealed class TextPane(Theme theme) : LinePane(theme)
{
    private Func<int, IReadOnlyList<Line>> _layOut = static _ => [];
    private IReadOnlyList<Line>? _lines;
    private int _linesWidth;
    private int _first;

    /// <summary>Shows another text from its beginning.</summary>
    /// <param name="layOut">Gives the lines for a number of columns.</param>
    public void Show(Func<int, IReadOnlyList<Line>> layOut)
    {
        _layOut = layOut;
        _lines = null;
        _first = 0;
        SetNeedsDraw();
    }

    /// <summary>Whether there is more text than can be seen at once.</summary>
    public bool Overflows => Lines(Viewport.Width).Count > Viewport.Height;

    public void Scroll(int rows)
    {
        _first = Math.Clamp(_first + rows, 0, LastFirst);
        SetNeedsDraw();
    }

    public void ToStart() => Scroll(-_first);

    public void ToEnd() => Scroll(LastFirst);

    public int Page => Math.Max(1, Viewport.Height - 1);

    protected override Line Compose(int row, int columns)
    {
        IReadOnlyList<Line> lines = Lines(columns);
        if (row == 0) _first = Math.Clamp(_first, 0, LastFirst);
        if (row == Viewport.Height - 1 && _first + Viewport.Height < lines.Count) return More(lines.Count - _first - row);
        return _first + row < lines.Count ? lines[_first + row] : Line.Blank;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.Flags.HasFlag(MouseFlags.WheeledDown)) Scroll(3);
        else if (mouse.Flags.HasFlag(MouseFlags.WheeledUp)) Scroll(-3);
        else return false;
        return true;
    }

    private int LastFirst => Math.Max(0, Lines(Viewport.Width).Count - Viewport.Height);

    private static Line More(int count) => Line.Of(string.Create(null, $"   {count} more lines"), Tone.Quiet);

    private IReadOnlyList<Line> Lines(int columns)
    {
        if (_lines is null || _linesWidth != columns)
        {
            _lines = _layOut(columns);
            _linesWidth = columns;
        }

        return _lines;
    }
}
