using Terminal.Gui.Input;

namespace Stockroom.Tests.Screens;

/// <summary>Keys that lead from the first screen to one worth looking at.</summary>
internal static class Scenes
{
    public static IReadOnlyDictionary<string, Action<ScreenRig>> All { get; } = new Dictionary<string, Action<ScreenRig>>
    {
        ["today"] = static _ => { },
        ["today-due"] = static rig => rig.Press(Key.End),
        ["holdings"] = static rig => rig.Press(Key.F2),
        ["holdings-filtered"] = static rig => rig.Press(Key.F2).Type("Acid bro"),
        ["holdings-none"] = static rig => rig.Press(Key.F2).Type("plutonium"),
        ["holdings-card"] = static rig => rig.Press(Key.F2).Type("h4n8p\r"),
        ["places"] = static rig => rig.Press(Key.F3),
        ["places-open"] = static rig => rig.Press(Key.F3, Key.CursorDown, Key.CursorDown, Key.Enter, Key.CursorDown),
        ["keys"] = static rig => rig.Press(Key.F2, new Key('?')),
    };
}
