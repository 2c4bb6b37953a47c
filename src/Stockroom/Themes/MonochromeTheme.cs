using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Stockroom.Themes;

/// <summary>No colour at all: the terminal's own paper and ink, bold, underlined or reversed.</summary>
internal static class MonochromeTheme
{
    public static Theme With(GlyphSet glyphs) => new("monochrome", glyphs, Look);

    private static Attribute Look(Tone tone) => new(Color.None, Color.None, tone switch
    {
        Tone.Heading or Tone.Danger or Tone.Warning => TextStyle.Bold,
        Tone.Chosen => TextStyle.Reverse,
        Tone.Entry => TextStyle.Underline,
        _ => TextStyle.None,
    });
}
