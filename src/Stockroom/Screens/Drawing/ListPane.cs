using Stockroom.Themes;
using Terminal.Gui.Input;

namespace Stockroom.Screens.Drawing;

/// <summary>A list with one chosen row that composes only the rows that are seen.</summary>
internal abstract class ListPane(Theme theme) : LinePane(theme)
{
    private int _first;

    /// <summary>Number of rows; any number.</summary>
    public abstract int Count { get; }

    /// <summary>Index of the chosen row; -1 where there is none.</summary>
    public int Chosen { get; private set; } = -1;

    /// <summary>Raised when another row is chosen.</summary>
    public event EventHandler? ChosenChanged;

    /// <summary>Rows that stay in place above the list.</summary>
    protected virtual int HeaderRows => 0;

    /// <summary>Rows of the list that are seen at once; at least one.</summary>
    public int Page => Math.Max(1, Viewport.Height - HeaderRows);

    protected abstract Line ComposeRow(int index, int columns, bool chosen);

    protected virtual Line ComposeHeader(int row, int columns) => Line.Blank;

    /// <summary>Whether a row can be chosen; headings cannot.</summary>
    protected virtual bool CanChoose(int index) => true;

    /// <summary>Chooses the nearest row that can be chosen, looking in the direction of travel first.</summary>
    public void Choose(int index)
    {
        int found = Nearest(Math.Clamp(index, 0, Math.Max(0, Count - 1)), index >= Chosen ? 1 : -1);
        bool other = found != Chosen;
        Chosen = found;
        SetNeedsDraw();
        if (other) ChosenChanged?.Invoke(this, EventArgs.Empty);
    }

    public void Step(int rows) => Choose(Math.Clamp(Chosen + rows, 0, Math.Max(0, Count - 1)));

    /// <summary>After the rows have changed: chooses the given row and says so even when the number is the same.</summary>
    public void Reset(int chosen)
    {
        Chosen = Nearest(Math.Clamp(chosen, 0, Math.Max(0, Count - 1)), 1);
        SetNeedsDraw();
        ChosenChanged?.Invoke(this, EventArgs.Empty);
    }

    protected sealed override Line Compose(int row, int columns)
    {
        if (row == 0) Follow();
        if (row < HeaderRows) return ComposeHeader(row, columns);
        int index = _first + row - HeaderRows;
        return index < Count ? ComposeRow(index, columns, index == Chosen) : Line.Blank;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.Flags.HasFlag(MouseFlags.WheeledDown)) Step(3);
        else if (mouse.Flags.HasFlag(MouseFlags.WheeledUp)) Step(-3);
        else if (mouse.Flags.HasFlag(MouseFlags.LeftButtonClicked) && mouse.Position is { } at && at.Y >= HeaderRows && _first + at.Y - HeaderRows < Count)
            Choose(_first + at.Y - HeaderRows);
        else return false;
        return true;
    }

    /// <summary>Scrolls just far enough that the chosen row, and a heading right above it, are seen.</summary>
    private void Follow()
    {
        int top = Math.Max(0, Chosen);
        while (top > 0 && Chosen - top < Page - 1 && !CanChoose(top - 1)) top--;
        if (top < _first) _first = top;
        if (Chosen >= _first + Page) _first = Chosen - Page + 1;
        _first = Math.Clamp(_first, 0, Math.Max(0, Count - Page));
    }

    private int Nearest(int index, int direction)
    {
        for (int i = index; i >= 0 && i < Count; i += direction)
            if (CanChoose(i)) return i;
        for (int i = index; i >= 0 && i < Count; i -= direction)
            if (CanChoose(i)) return i;
        return -1;
    }
}
