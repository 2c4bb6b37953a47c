using System.Text;
using Stockroom.Screens;
using Stockroom.Themes;
using Terminal.Gui.App;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;

namespace Stockroom.Tests.Screens;

/// <summary>The whole window on a screen that exists in memory only: keys go in, text and looks come out.</summary>
internal sealed class ScreenRig : IDisposable
{
    private readonly IApplication _app;
    private readonly StockroomWindow _window;
    private readonly SessionToken _session;

    public ScreenRig(int columns = 80, int rows = 24, FakeDesk? desk = null, Theme? theme = null, TimeProvider? time = null)
    {
        Desk = desk ?? new FakeDesk();
        _app = Application.Create(new VirtualTimeProvider());
        _app.AnsiStartupGate = null;
        _app.Init(DriverRegistry.Names.ANSI);
        _app.Driver!.SetScreenSize(columns, rows);
        _window = new StockroomWindow(Desk, theme ?? ColourTheme.With(GlyphSet.Unicode), time ?? TimeProvider.System);
        _session = _app.Begin(_window)!;
        Draw();
    }

    public FakeDesk Desk { get; }

    public StockroomWindow Window => _window;

    /// <summary>The text on the screen; blanks at the ends of rows are left out.</summary>
    public string Text => string.Join('\n', Rows) + "\n";

    public IReadOnlyList<string> Rows
    {
        get
        {
            Cell[,] cells = _app.Driver!.Contents!;
            return [.. Enumerable.Range(0, cells.GetLength(0)).Select(row => RowOf(cells, row))];
        }
    }

    public IEnumerable<Terminal.Gui.Drawing.Attribute> Looks =>
        _app.Driver!.Contents!.Cast<Cell>().Select(c => c.Attribute).OfType<Terminal.Gui.Drawing.Attribute>();

    /// <summary>What the last drawing sent to the terminal.</summary>
    public string LastSent => _app.Driver!.GetOutput().GetLastOutput();

    public ScreenRig Press(params Key[] keys)
    {
        foreach (Key key in keys)
        {
            _app.InjectKey(key);
            Draw();
        }

        return this;
    }

    public ScreenRig Type(string text) => Press([.. text.Select(c => c is '\r' ? Key.Enter : new Key(c))]);

    public ScreenRig Paste(string text)
    {
        _app.RaisePasteEvent(text);
        Draw();
        return this;
    }

    public ScreenRig Resize(int columns, int rows)
    {
        _app.Driver!.SetScreenSize(columns, rows);
        Draw();
        return this;
    }

    public void Dispose()
    {
        _app.End(_session);
        _window.Dispose();
        _app.Dispose();
    }

    private void Draw() => _app.LayoutAndDraw();

    private static string RowOf(Cell[,] cells, int row)
    {
        var text = new StringBuilder();
        for (int column = 0; column < cells.GetLength(1); column++) text.Append(cells[row, column].Grapheme);
        return text.ToString().TrimEnd();
    }
}

/// <summary>The library keeps state for the whole process, so these tests run one after the other.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class OneScreenAtATime
{
    public const string Name = "one screen at a time";
}
