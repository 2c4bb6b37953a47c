namespace Stockroom.Themes;

/// <summary>The few signs that the screens draw themselves, each with an ASCII twin.</summary>
/// <param name="IsAscii">Whether every text must be put into ASCII as well.</param>
/// <param name="Rule">Fills a horizontal rule.</param>
/// <param name="Cut">Where a text was cut short.</param>
/// <param name="Open">Before a place whose inside is shown.</param>
/// <param name="Shut">Before a place whose inside is hidden.</param>
/// <param name="Hand">Before the chosen line.</param>
internal sealed record GlyphSet(bool IsAscii, string Rule, string Cut, string Open, string Shut, string Hand)
{
    public static GlyphSet Unicode { get; } = new(false, "─", "…", "▾", "▸", "›");

    public static GlyphSet Ascii { get; } = new(true, "-", "~", "v", "+", ">");
}
