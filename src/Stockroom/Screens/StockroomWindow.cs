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
    private readonly Rooms _rooms;
    private readonly ScanTail _scanTail;
    private readonly NavigationLine _navigation;
    private readonly StandingRule _rule;
    private readonly KeyLine _keyLine;
    private readonly TextPane _sheet;
    private readonly IReadOnlyList<KeyAction> _everywhere;
    private IDriver? _driver;

    public StockroomWindow(IDesk desk, Theme theme, TimeProvider time)
    {
        Border.Thickness = new Thickness(0);
        SetScheme(theme.Scheme);
        _rooms = new Rooms(this, new ScreenContext(desk, theme, this));
        _scanTail = new ScanTail(time);
        _everywhere = EverywhereKeys.Of(this);
        _navigation = new NavigationLine(theme, desk.BookName, [.. ScreenList.All.Select(e => e.Title)]);
        _rule = new StandingRule(theme, () => desk.Standing);
        _sheet = new TextPane(theme) { Visible = false };
        _keyLine = new KeyLine(theme, () => _sheet.Visible ? [] : _rooms.Screen.Keys, () => _everywhere);
        Add(_navigation, _rule, _keyLine, _sheet);
        Show(0);
    }

    /// <summary>Index of the screen that is shown.</summary>
    public int CurrentIndex => _rooms.Current;

    /// <summary>Whether plain characters are typed into the screen that is shown.</summary>
    public bool TakesText => _rooms.Screen.TakesText;

    /// <summary>Shows another screen; the numbers go round.</summary>
    public void Show(int index)
    {
        CloseSheet();
        _rooms.Show(index);
        _navigation.StandIn(_rooms.Current);
        Say("");
    }

    public void ToContainer(string id)
    {
        if (((IFindsContainers)_rooms.Ready(Rooms.Finder)).ShowContainer(id)) Show(Rooms.Finder);
        else Say($"no container \"{id}\" in this book");
    }

    public void ToScanned(string id)
    {
        ToContainer(id);
        _scanTail.Begin();
    }

    public void Say(string text) => _keyLine.Say(text);

    public void ShowSheet()
    {
        IReadOnlyList<Line> lines = KeySheet.Lines(_rooms.Title, _rooms.Screen.Keys, _everywhere);
        _sheet.Show(_ => lines);
        _sheet.Visible = true;
        _rooms.Screen.Visible = false;
        _sheet.Forget();
    }

    public void DrawAfresh()
    {
        if (App is { } app) app.ClearScreenNextIteration = true;
    }

    /// <summary>Asks the desk again in any case, as on a new day.</summary>
    public void RefreshAll()
    {
        _rooms.Outdate();
        _rooms.Ready(_rooms.Current);
        _rule.SetNeedsDraw();
    }

    protected override bool OnKeyDown(Key key)
    {
        if (key == Key.Z.WithCtrl) return false;
        _rooms.Ready(_rooms.Current);
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
            _driver = driver;
            driver.ClearedContents += OnClearedContents;
            app.LayoutAndDrawComplete += OnDrawn;
            app.Paste += OnPasted;
        }
        else if (!newIsRunning && _driver is not null)
        {
            _driver.ClearedContents -= OnClearedContents;
            _driver = null;
            if (App is not { } ending) return;
            ending.LayoutAndDrawComplete -= OnDrawn;
            ending.Paste -= OnPasted;
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

    private void Press(Key key)
    {
        string text = TypedText(key);
        bool enter = key == Key.Enter || key == Key.J.WithCtrl;
        if ((text.Length > 0 || enter) && _scanTail.Swallows()) return;
        Say("");
        if (_sheet.Visible) PressOnSheet(key);
        else if (text.Length > 0 && TakesText) _rooms.Screen.Type(text);
        else if (KeyRing.TryPress(enter ? Key.Enter : key, [.. _rooms.Screen.Keys, .. _everywhere], out string? why)) SayWhy(why);
        else Find(text);
    }

    private void SayWhy(string? why)
    {
        if (why is not null) Say(why);
    }

    private void PressOnSheet(Key key)
    {
        if (key == Key.CursorDown) _sheet.Scroll(1);
        else if (key == Key.CursorUp) _sheet.Scroll(-1);
        else if (key == EverywhereKeys.Sheet || !KeyRing.TryPress(key, _everywhere, out _)) CloseSheet();
    }

    private void Find(string text)
    {
        if (string.IsNullOrWhiteSpace(text)) return;
        Show(Rooms.Finder);
        _rooms.Screen.Type(text);
    }

    private static string TypedText(Key key)
    {
        if (key.IsCtrl || key.IsAlt || key == EverywhereKeys.Sheet) return "";
        string text = key.AsGrapheme;
        return text.Any(char.IsControl) ? "" : text;
    }

    private void CloseSheet()
    {
        if (!_sheet.Visible) return;
        _sheet.Visible = false;
        _rooms.Screen.Visible = true;
        Rooms.Forget(_rooms.Screen);
        SetNeedsLayout();
    }

    private void OnClearedContents(object? sender, EventArgs e) => Rooms.Forget(this);

    private void OnPasted(object? sender, PasteEventArgs pasted)
    {
        pasted.Handled = true;
        if (ScannedCode.TryId(pasted.Text, out string id)) ToContainer(id);
        else Find(TextFit.Clean(pasted.Text.Trim().Split('\r', '\n')[0]));
    }

    /// <summary>Sets the terminal's cursor once a drawing, and tells the library that it need not do so at every turn.</summary>
    private void OnDrawn(object? sender, EventArgs e)
    {
        if (_driver is null) return;
        var cursor = new Cursor();
        if (!_sheet.Visible && _rooms.Screen is { Caret: { } at } screen)
            cursor = new Cursor { Position = screen.ViewportToScreen(at), Style = CursorStyle.SteadyBar };
        _driver.SetCursor(cursor);
        _driver.SetCursorNeedsUpdate(false);
    }
}
