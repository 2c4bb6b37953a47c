using Stockroom.Screens.Drawing;
using Stockroom.Screens.Shell;
using Stockroom.Themes;
using Stockroom.Views;
using Terminal.Gui.App;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;
using Line = Stockroom.Screens.Drawing.Line;

namespace Stockroom.Screens;

/// <summary>The shell: rooms above, keys below, one screen between them. Every key comes here first.</summary>
internal sealed class StockroomWindow : Runnable, INavigator
{
    private readonly IDesk _desk;
    private readonly ScreenContext _context;
    private readonly ScanTail _scanTail;
    private readonly NavigationLine _navigation;
    private readonly RulePane _rule;
    private readonly KeyLine _keyLine;
    private readonly TextPane _sheet;
    private readonly ShownScreen?[] _shown = new ShownScreen?[ScreenList.All.Count];
    private readonly IReadOnlyList<KeyAction> _everywhere;
    private int _current = -1;
    private IDriver? _watched;

    public StockroomWindow(IDesk desk, Theme theme, TimeProvider time)
    {
        _desk = desk;
        _context = new ScreenContext(desk, theme, this);
        _scanTail = new ScanTail(time);
        Border.Thickness = new Thickness(0);
        SetScheme(theme.Scheme);
        _everywhere = EverywhereKeys.Of(this);
        _navigation = new NavigationLine(theme, desk.BookName, [.. ScreenList.All.Select(e => e.Title)]);
        _rule = new RulePane(theme);
        _keyLine = new KeyLine(theme, () => _sheet!.Visible ? [] : Current.Keys, () => _everywhere);
        _sheet = new TextPane(theme) { Visible = false };
        Add(_navigation, _rule, _keyLine, _sheet);
        Show(0);
    }

    /// <summary>Index of the screen that is shown.</summary>
    public int CurrentIndex => _current;

    /// <summary>Whether plain characters are typed into the screen that is shown.</summary>
    public bool TakesText => Current.TakesText;

    private Screen Current => _shown[_current]!.Screen;

    /// <summary>Shows another screen; the numbers go round.</summary>
    public void Show(int index)
    {
        int wanted = (index + _shown.Length) % _shown.Length;
        CloseSheet();
        if (wanted != _current)
        {
            if (_current >= 0) Current.Visible = false;
            _current = wanted;
            if (_shown[wanted] is null) Make(wanted);
            Current.Visible = true;
            ForgetAll();
        }

        RefreshIfChanged();
        _navigation.StandIn(_current);
        _keyLine.Say("");
    }

    public void ToContainer(string id)
    {
        int finder = IndexOfFinder;
        int before = _current;
        Show(finder);
        if (((IFindsContainers)_shown[finder]!.Screen).ShowContainer(id)) return;
        Show(before);
        Say($"no container \"{id}\" in this book");
    }

    public void ToScanned(string id)
    {
        ToContainer(id);
        _scanTail.Begin();
    }

    public void Say(string text) => _keyLine.Say(text);

    public void ShowSheet()
    {
        IReadOnlyList<Line> lines = KeySheet.Lines(ScreenList.All[_current].Title, Current.Keys, _everywhere);
        _sheet.Show(_ => lines);
        _sheet.Visible = true;
        Current.Visible = false;
        _sheet.Forget();
        _keyLine.Say("");
    }

    public void DrawAfresh()
    {
        if (App is { } app) app.ClearScreenNextIteration = true;
    }

    /// <summary>Asks the desk again where the book, or the day, has changed.</summary>
    public void RefreshIfChanged()
    {
        ShownScreen shown = _shown[_current]!;
        if (shown.Version == _desk.Version) return;
        shown.Version = _desk.Version;
        shown.Screen.Refresh();
    }

    /// <summary>Asks the desk again in any case, as on a new day.</summary>
    public void RefreshAll()
    {
        foreach (ShownScreen? shown in _shown)
            if (shown is not null) shown.Version = long.MinValue;
        RefreshIfChanged();
    }

    protected override bool OnKeyDown(Key key)
    {
        if (key == Key.Z.WithCtrl) return false;
        RefreshIfChanged();
        Press(key);
        _keyLine.SetNeedsDraw();
        return true;
    }

    protected override bool OnClearingViewport() => true;

    protected override void OnIsRunningChanged(bool newIsRunning)
    {
        base.OnIsRunningChanged(newIsRunning);
        if (newIsRunning && App is { Driver: { } driver } app)
        {
            _watched = driver;
            driver.ClearedContents += OnClearedContents;
            app.LayoutAndDrawComplete += OnDrawn;
            app.Paste += OnPasted;
        }
        else if (!newIsRunning && _watched is not null)
        {
            _watched.ClearedContents -= OnClearedContents;
            _watched = null;
        }
    }

    protected override void OnSubViewLayout(LayoutEventArgs args)
    {
        int columns = Viewport.Width;
        int rows = Viewport.Height;
        _navigation.Place(0, 0, columns, 1);
        _rule.Place(0, 1, columns, 1);
        _sheet.Place(0, 2, columns, rows - 3);
        _keyLine.Place(0, rows - 1, columns, 1);
        base.OnSubViewLayout(args);
    }

    private int IndexOfFinder => ScreenList.All.Select((entry, i) => (entry, i)).First(p => p.entry.Finds).i;

    private void Press(Key key)
    {
        string text = TypedText(key);
        bool enter = key == Key.Enter || key == Key.J.WithCtrl;
        if ((text.Length > 0 || enter) && _scanTail.Swallows()) return;
        _keyLine.Say("");
        if (_sheet.Visible)
        {
            PressOnSheet(key);
            return;
        }

        if (text.Length > 0 && Current.TakesText)
        {
            Current.Type(text);
            return;
        }

        if (KeyRing.TryPress(enter ? Key.Enter : key, [.. Current.Keys, .. _everywhere], out string? why))
        {
            if (why is not null) Say(why);
            return;
        }

        if (string.IsNullOrWhiteSpace(text)) return;
        Show(IndexOfFinder);
        Current.Type(text);
    }

    private void PressOnSheet(Key key)
    {
        if (key == Key.CursorDown) _sheet.Scroll(1);
        else if (key == Key.CursorUp) _sheet.Scroll(-1);
        else if (_everywhere.Any(a => a.IsFor(key)) && key != EverywhereKeys.Sheet) KeyRing.TryPress(key, _everywhere, out _);
        else CloseSheet();
    }

    private static string TypedText(Key key)
    {
        if (key.IsCtrl || key.IsAlt || key == EverywhereKeys.Sheet) return "";
        string text = key.AsGrapheme;
        return text.Length == 0 || text.Any(char.IsControl) ? "" : text;
    }

    private void CloseSheet()
    {
        if (!_sheet.Visible) return;
        _sheet.Visible = false;
        Current.Visible = true;
        ForgetAll();
    }

    private void Make(int index)
    {
        Screen screen = ScreenList.All[index].Make(_context);
        screen.Y = 2;
        screen.Height = Dim.Fill(1);
        _shown[index] = new ShownScreen(screen);
        Add(screen);
    }

    private void ForgetAll()
    {
        Forget(this);
        SetNeedsLayout();
    }

    private static void Forget(View view)
    {
        foreach (View inner in view.SubViews)
        {
            if (inner is LinePane pane) pane.Forget();
            Forget(inner);
        }
    }

    private void OnClearedContents(object? sender, EventArgs e) => Forget(this);

    private void OnPasted(object? sender, PasteEventArgs pasted)
    {
        pasted.Handled = true;
        if (ScannedCode.TryId(pasted.Text, out string id)) ToContainer(id);
        else if (!string.IsNullOrWhiteSpace(pasted.Text))
        {
            Show(IndexOfFinder);
            Current.Type(TextFit.Clean(pasted.Text.Split('\r', '\n')[0]));
        }
    }

    /// <summary>Sets the terminal's cursor once a drawing, and tells the library that it need not do so at every turn.</summary>
    private void OnDrawn(object? sender, EventArgs e)
    {
        if (App?.Driver is not { } driver) return;
        var cursor = new Cursor();
        if (!_sheet.Visible && Current.Caret is { } at)
            cursor = new Cursor { Position = Current.ViewportToScreen(at), Style = CursorStyle.SteadyBar };
        driver.SetCursor(cursor);
        driver.SetCursorNeedsUpdate(false);
    }

    private sealed class ShownScreen(Screen screen)
    {
        public Screen Screen { get; } = screen;

        public long Version { get; set; } = long.MinValue;
    }
}
