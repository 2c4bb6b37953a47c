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
            new("Up", "choose a line", () => list.Step(-1), Key.CursorUp) { Hindrance = hindrance },
            new("Down", "choose a line", () => list.Step(1), Key.CursorDown) { Hindrance = hindrance },
            new("PgUp", "go a page up or down", () => list.Step(-list.Page), Key.PageUp) { Hindrance = hindrance },
            new("PgDn", "go a page up or down", () => list.Step(list.Page), Key.PageDown) { Hindrance = hindrance },
            new("Home", "go to the first or go to the first or the last line", () => list.Choose(0), Key.Home) { Hindrance = hindrance },
            new("End", "go to the first or the last line", () => list.Choose(list.Count - 1), Key.End) { Hindrance = hindrance },
        ];
    }

    public static IReadOnlyList<KeyAction> Scrolling(TextPane text, Func<bool> here)
    {
        Func<string?> hindrance = () => !here() ? "the card is not where the keys go now" : !text.Overflows ? "all of it is in sight" : null;
        return
        [
            new("Up", "scroll a line", () => text.Scroll(-1), Key.CursorUp) { Hindrance = hindrance },
            new("Down", "scroll a line", () => text.Scroll(1), Key.CursorDown) { Hindrance = hindrance },
            new("PgUp", "scroll a page", () => text.Scroll(-text.Page), Key.PageUp) { Hindrance = hindrance },
            new("PgDn", "scroll a page", () => text.Scroll(text.Page), Key.PageDown) { Hindrance = hindrance },
            new("Home", "to the beginning or the end", text.ToStart, Key.Home) { Hindrance = hindrance },
            new("End", "to the beginning or the end", text.ToEnd, Key.End) { Hindrance = hindrance },
        ];
    }
}
