using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Stockroom.Themes;

/// <summary>
/// The terminal's own paper and ink, with three accents that are dark enough for a white ground and light enough for a
/// black one.
/// </summary>
internal static class ColourTheme
{
    private static readonly Color Brick = new(0xD0, 0x45, 0x35);
    private static readonly Color Ochre = new(0xB0, 0x80, 0x20);
    private static readonly Color Teal = new(0x2F, 0x8F, 0x9D);

    public static Theme With(GlyphSet glyphs) => new("colour", glyphs, Look);

    private static Attribute Look(Tone tone) => tone switch
    {
        Tone.Quiet => new(Color.None, Color.None, TextStyle.Faint),
        Tone.Heading => new(Teal, Color.None, TextStyle.Bold),
        Tone.Chosen => new(Color.None, Color.None, TextStyle.Reverse),
        Tone.Danger => new(Brick, Color.None, TextStyle.Bold),
        Tone.Warning => new(Ochre, Color.None, TextStyle.Bold),
        Tone.Notice => new(Teal, Color.None, TextStyle.None),
        Tone.Entry => new(Color.None, Color.None, TextStyle.Underline),
        _ => new(Color.None, Color.None, TextStyle.None),
    };
}
