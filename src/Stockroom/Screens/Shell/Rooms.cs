using Stockroom.Screens.Drawing;
using Stockroom.Views;
using Terminal.Gui.ViewBase;

namespace Stockroom.Screens.Shell;

/// <summary>The screens of the list: each is made when it is first wanted, and asked to refresh when the book has changed.</summary>
/// <param name="host">The view that holds them.</param>
internal sealed class Rooms(View host, ScreenContext context)
{
    private readonly Room?[] _rooms = new Room?[ScreenList.All.Count];

    /// <summary>Index of the screen that is shown; -1 before the first.</summary>
    public int Current { get; private set; } = -1;

    public Screen Screen => _rooms[Current]!.Screen;

    public string Title => ScreenList.All[Current].Title;

    /// <summary>Index of the screen that finds containers.</summary>
    public static int Finder { get; } = ScreenList.All.Select((entry, i) => (entry, i)).First(p => p.entry.Finds).i;

    /// <summary>Shows another screen; the numbers go round.</summary>
    public void Show(int index)
    {
        int wanted = (index + _rooms.Length) % _rooms.Length;
        Screen screen = Ready(wanted);
        if (wanted == Current) return;
        if (Current >= 0) Screen.Visible = false;
        Current = wanted;
        screen.Visible = true;
        Forget(screen);
        host.SetNeedsLayout();
    }

    /// <summary>The screen with what the book says now, shown or not.</summary>
    public Screen Ready(int index)
    {
        Room room = _rooms[index] ??= Make(index);
        IDesk desk = context.Desk;
        if (room.Version == desk.Version) return room.Screen;
        room.Version = desk.Version;
        room.Screen.Refresh();
        return room.Screen;
    }

    /// <summary>Has every screen ask the desk again, as on a new day.</summary>
    public void Outdate()
    {
        foreach (Room? room in _rooms)
            if (room is not null) room.Version = null;
    }

    /// <summary>Has every pane inside a view be drawn anew, after something else stood in its place.</summary>
    public static void Forget(View view)
    {
        foreach (View inner in view.SubViews)
        {
            if (inner is LinePane pane) pane.Forget();
            Forget(inner);
        }
    }

    private Room Make(int index)
    {
        Screen screen = ScreenList.All[index].Make(context);
        screen.Y = 2;
        screen.Height = Dim.Fill(1);
        screen.Visible = false;
        host.Add(screen);
        return new Room(screen);
    }

    private sealed class Room(Screen screen)
    {
        public Screen Screen { get; } = screen;

        /// <summary>Version of the book that the screen shows; null where it must ask again.</summary>
        public long? Version { get; set; }
    }
}
