using Stockroom.Views;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Stockroom.Themes;

/// <summary>How each tone looks on this terminal, and which characters it can show.</summary>
internal sealed class Theme
{
    private readonly Attribute[] _looks;

    /// <param name="name">Plain name, such as "colour".</param>
    /// <param name="glyphs">The characters to draw with.</param>
    /// <param name="look">The look of each tone; asked once for every tone.</param>
    public Theme(string name, GlyphSet glyphs, Func<Tone, Attribute> look)
    {
        Name = name;
        Glyphs = glyphs;
        _looks = [.. Enum.GetValues<Tone>().Select(look)];
        Scheme = new Scheme(_looks[(int)Tone.Plain]);
    }

    public string Name { get; }

    public GlyphSet Glyphs { get; }

    /// <summary>What the library paints where we paint nothing.</summary>
    public Scheme Scheme { get; }

    public Attribute this[Tone tone] => _looks[(int)tone];

    /// <summary>The tone that goes with a weight; the sign or word beside it carries the meaning.</summary>
    public static Tone ToneOf(Attention weight) => weight switch
    {
        Attention.Danger => Tone.Danger,
        Attention.Warning => Tone.Warning,
        Attention.Notice => Tone.Notice,
        _ => Tone.Plain,
    };

    /// <summary>The same text in characters that this terminal can show.</summary>
    public string Show(string text) => Glyphs.IsAscii ? AsciiTwin.Of(text) : text;
}
