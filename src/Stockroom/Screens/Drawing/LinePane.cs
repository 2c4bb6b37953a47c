using Stockroom.Themes;
using Terminal.Gui.ViewBase;

namespace Stockroom.Screens.Drawing;

/// <summary>
/// A rectangle that draws itself row by row and remembers what it drew: only rows that look different are written again.
/// </summary>
internal abstract class LinePane : View
{
    private Line?[] _drawn = [];
    private int _drawnWidth;

    protected LinePane(Theme theme)
    {
        Theme = theme;
        CanFocus = false;
        SetScheme(theme.Scheme);
    }

    protected Theme Theme { get; }

    /// <summary>Compose a row; at most the given number of columns will be seen.</summary>
    protected abstract Line Compose(int row, int columns);

    /// <summary>Forgets what stands on the screen, after something else was drawn there.</summary>
    public void Forget()
    {
        _drawn = [];
        SetNeedsDraw();
    }

    public void Place(int x, int y, int width, int height)
    {
        var frame = new System.Drawing.Rectangle(x, y, Math.Max(0, width), Math.Max(0, height));
        if (Frame == frame) return;
        X = frame.X;
        Y = frame.Y;
        Width = frame.Width;
        Height = frame.Height;
        Forget();
    }

    protected override bool OnClearingViewport() => true;

    protected override bool OnDrawingText(DrawContext? context) => true;

    protected override bool OnDrawingContent(DrawContext? context)
    {
        int columns = Viewport.Width;
        int rows = Viewport.Height;
        if (_drawn.Length != rows || _drawnWidth != columns)
        {
            _drawn = new Line?[rows];
            _drawnWidth = columns;
        }

        for (int row = 0; row < rows; row++)
        {
            Line line = Compose(row, columns);
            if (line.Looks(_drawn[row])) continue;
            Write(row, columns, line);
            _drawn[row] = line;
        }

        return true;
    }

    private void Write(int row, int columns, Line line)
    {
        Move(0, row);
        int left = columns;
        foreach (Piece piece in line.Pieces)
        {
            string text = TextFit.Cut(Theme.Show(TextFit.Clean(piece.Text)), left, Theme.Glyphs.Cut);
            if (text.Length == 0) continue;
            SetAttribute(Theme[piece.Tone]);
            AddStr(text);
            left -= TextFit.Columns(text);
        }

        if (left <= 0) return;
        SetAttribute(Theme[line.Ground]);
        AddStr(new string(' ', left));
    }
}
