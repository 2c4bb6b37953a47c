using Terminal.Gui.Input;

namespace Stockroom.Screens.Shell;

/// <summary>The keys of the shell, the same in every screen.</summary>
internal static class EverywhereKeys
{
    /// <summary>Shows the keys that work now.</summary>
    public static Key Sheet { get; } = new('?');

    public static IReadOnlyList<KeyAction> Of(StockroomWindow window)
    {
        var keys = new List<KeyAction>
        {
            new("?", "this sheet; any key closes it", window.ShowSheet, Sheet) { Brief = "keys" },
            new("Ctrl-Q", "leave", window.RequestStop, Key.Q.WithCtrl) { Brief = "leaves" },
            new("Tab", "the next room", () => window.Show(window.CurrentIndex + 1), Key.Tab) { Brief = "next room" },
            new("Shift-Tab", "the room before", () => window.Show(window.CurrentIndex - 1), Key.Tab.WithShift),
        };
        keys.AddRange(ScreenList.All.SelectMany((entry, i) => Room(window, entry.Title, i)));
        keys.Add(new("Ctrl-L", "draw the screen afresh", window.DrawAfresh, Key.L.WithCtrl));
        return keys;
    }

    /// <summary>The function key works everywhere; the digit is a character like any other where text is typed.</summary>
    private static IEnumerable<KeyAction> Room(StockroomWindow window, string title, int index)
    {
        string number = string.Create(null, $"{index + 1}");
        yield return new("F" + number, "to " + title, () => window.Show(index), new Key(Key.F1.KeyCode + (uint)index));
        yield return new(number, "to " + title, () => window.Show(index), new Key(number[0]))
        {
            Hindrance = () => window.TakesText ? "digits are typed here" : null,
        };
    }
}
