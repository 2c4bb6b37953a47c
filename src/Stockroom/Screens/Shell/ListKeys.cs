using Stockroom.Screens.Drawing;
using Terminal.Gui.Input;

namespace Stockroom.Screens.Shell;

/// <summary>The keys with which a line of a list is chosen, or a text is scrolled, the same in every screen.</summary>
internal static class ListKeys
{
    public static IReadOnlyList<KeyAction> Choosing(ListPane list, Func<bool> here)
    {
        Func<string?> hindrance = () => !here() ? "the list is not where the keys go now" : list.Chosen < 0 ? "the list is empty" : null;
        return
        [
            new("Up", "choose the line above", () => list.Step(-1), Key.CursorUp) { Hindrance = hindrance },
            new("Down", "choose the line below", () => list.Step(1), Key.CursorDown) { Hindrance = hindrance },
            new("PgUp", "a page up", () => list.Step(-list.Page), Key.PageUp) { Hindrance = hindrance },
            new("PgDn", "a page down", () => list.Step(list.Page), Key.PageDown) { Hindrance = hindrance },
            new("Home", "the first line", () => list.Choose(0), Key.Home) { Hindrance = hindrance },
            new("End", "the last line", () => list.Choose(list.Count - 1), Key.End) { Hindrance = hindrance },
        ];
    }

    public static IReadOnlyList<KeyAction> Scrolling(TextPane text, Func<bool> here)
    {
        Func<string?> hindrance = () => !here() ? "the card is not where the keys go now" : !text.Overflows ? "all of it is in sight" : null;
        return
        [
            new("Up", "scroll up a line", () => text.Scroll(-1), Key.CursorUp) { Hindrance = hindrance },
            new("Down", "scroll down a line", () => text.Scroll(1), Key.CursorDown) { Hindrance = hindrance },
            new("PgUp", "scroll up a page", () => text.Scroll(-text.Page), Key.PageUp) { Hindrance = hindrance },
            new("PgDn", "scroll down a page", () => text.Scroll(text.Page), Key.PageDown) { Hindrance = hindrance },
            new("Home", "to the beginning", text.ToStart, Key.Home) { Hindrance = hindrance },
            new("End", "to the end", text.ToEnd, Key.End) { Hindrance = hindrance },
        ];
    }
}
