using Stockroom.Themes;
using Stockroom.Views;
using Terminal.Gui.Drawing;

namespace Stockroom.Tests.Screens.Themes;

public sealed class TerminalTraitsTests
{
    /// <summary>The convention of no-color.org: set and not empty means no colour, whatever the value.</summary>
    [Theory]
    [InlineData(null, true)]
    [InlineData("", true)]
    [InlineData("1", false)]
    [InlineData("0", false)]
    public void NoColor_SetToAnything_TakesColourAway(string? value, bool colour)
    {
        TerminalTraits traits = Traits(("TERM", "xterm-256color"), ("NO_COLOR", value));
        Assert.Equal(colour, traits.Colour);
        Assert.Equal(colour ? "colour" : "monochrome", traits.ToTheme().Name);
    }

    /// <summary>The order of POSIX, Base Definitions 8.2: LC_ALL, then the category, then LANG; an empty value counts as unset.</summary>
    [Theory]
    [InlineData(null, null, null, false)]
    [InlineData(null, null, "en_GB.UTF-8", true)]
    [InlineData(null, null, "C", false)]
    [InlineData(null, "C.utf8", "C", true)]
    [InlineData("C", "C.UTF-8", "C.UTF-8", false)]
    [InlineData("", "", "nb_NO.UTF-8", true)]
    public void Locale_ThatSaysUtf8_AllowsMoreThanAscii(string? all, string? type, string? lang, bool unicode)
    {
        TerminalTraits traits = Traits(("TERM", "xterm"), ("LC_ALL", all), ("LC_CTYPE", type), ("LANG", lang));
        Assert.Equal(unicode, traits.Unicode);
        Assert.Equal(!unicode, traits.ToTheme().Glyphs.IsAscii);
    }

    [Theory]
    [InlineData("dumb")]
    [InlineData("linux")]
    [InlineData("vt100")]
    public void Terminal_WithASmallCharacterSet_GetsAscii(string term) =>
        Assert.False(Traits(("TERM", term), ("LANG", "C.UTF-8")).Unicode);

    [Fact]
    public void DumbTerminal_GetsNoColour() => Assert.False(Traits(("TERM", "dumb"), ("LANG", "C.UTF-8")).Colour);

    [Fact]
    public void MonochromeTheme_InEveryTone_HasNoColour()
    {
        Theme theme = MonochromeTheme.With(GlyphSet.Unicode);
        foreach (Tone tone in Enum.GetValues<Tone>())
            Assert.Equal((Color.None, Color.None), (theme[tone].Foreground, theme[tone].Background));
    }

    [Fact]
    public void ColourTheme_Weights_LookDifferent()
    {
        Theme theme = ColourTheme.With(GlyphSet.Unicode);
        var looks = Enum.GetValues<Attention>().Select(w => theme[Theme.ToneOf(w)]).ToList();
        Assert.Equal(looks.Count, looks.Distinct().Count());
    }

    /// <summary>Contrast as WCAG 2.1 defines it, at least 3:1 (its figure for large or bold text), on black and on white.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(255)]
    public void ColourTheme_Accents_CanBeReadOnBlackAndOnWhite(int ground)
    {
        Theme theme = ColourTheme.With(GlyphSet.Unicode);
        foreach (Tone tone in new[] { Tone.Danger, Tone.Warning, Tone.Notice, Tone.Heading })
        {
            double contrast = Contrast(theme[tone].Foreground, new Color(ground, ground, ground));
            Assert.True(contrast >= 3, $"{tone} on {ground}: {contrast:F2}");
        }
    }

    [Theory]
    [InlineData("plain", "plain")]
    [InlineData("19 °C", "19 deg C")]
    [InlineData("4–5 µm", "4-5 um")]
    [InlineData("H₂SO₄", "H2SO4")]
    [InlineData("Ålesund café", "Alesund cafe")]
    [InlineData("SO₄²⁻, ½ Œuvre", "SO42-, ? OEuvre")]
    [InlineData("≤ 10 cm²", "<= 10 cm2")]
    [InlineData("水", "?")]
    public void AsciiTwin_OfAText_IsReadableAscii(string text, string twin) => Assert.Equal(twin, AsciiTwin.Of(text));

    private static double Contrast(Color one, Color other)
    {
        double a = Luminance(one);
        double b = Luminance(other);
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(Color colour) => (0.2126 * Linear(colour.R)) + (0.7152 * Linear(colour.G)) + (0.0722 * Linear(colour.B));

    private static double Linear(byte channel)
    {
        double c = channel / 255.0;
        return c <= 0.03928 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
    }

    private static TerminalTraits Traits(params (string Name, string? Value)[] variables) =>
        TerminalTraits.From(name => variables.FirstOrDefault(v => v.Name == name).Value);
}
