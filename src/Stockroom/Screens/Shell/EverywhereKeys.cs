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
        keys.AddRange(ScreenList.All.Select((entry, i) => Room(window, entry.Title, i)));
        keys.Add(new("Ctrl-L", "draw the screen afresh", window.DrawAfresh, Key.L.WithCtrl));
        return keys;
    }

    /// <summary>The digit is a letter like any other where text is typed; the function key works everywhere.</summary>
    private static KeyAction Room(StockroomWindow window, string title, int index)
    {
        string number = string.Create(null, $"{index + 1}");
        var function = new Key(Key.F1.KeyCode + (uint)index);
        return new($"F{number} or {number}", $"to {title}", () => window.Show(index), function, new Key(number[0]));
    }
}
