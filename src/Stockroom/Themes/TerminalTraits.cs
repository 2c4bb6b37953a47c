namespace Stockroom.Themes;

/// <summary>What the environment says that the terminal can show.</summary>
/// <param name="Colour">False where NO_COLOR is set to anything, or the terminal says that it is dumb.</param>
/// <param name="Unicode">True where the locale says UTF-8 and the terminal is not one known for a small character set.</param>
internal sealed record TerminalTraits(bool Colour, bool Unicode)
{
    private static readonly string[] SmallCharacterSets = ["dumb", "linux", "vt52", "vt100", "vt102", "vt220", "ansi"];

    /// <param name="variable">Reads an environment variable; null where it is not set.</param>
    public static TerminalTraits From(Func<string, string?> variable)
    {
        string term = variable("TERM") ?? "";
        bool dumb = string.Equals(term, "dumb", StringComparison.Ordinal);
        bool colour = string.IsNullOrEmpty(variable("NO_COLOR")) && !dumb;
        bool unicode = SaysUtf8(variable) && !SmallCharacterSets.Contains(term, StringComparer.Ordinal);
        return new(colour, unicode);
    }

    public Theme ToTheme()
    {
        GlyphSet glyphs = Unicode ? GlyphSet.Unicode : GlyphSet.Ascii;
        return Colour ? ColourTheme.With(glyphs) : MonochromeTheme.With(glyphs);
    }

    /// <summary>The first of the three that is set and not empty decides, as POSIX has it.</summary>
    private static bool SaysUtf8(Func<string, string?> variable)
    {
        if (OperatingSystem.IsWindows()) return true;
        string? locale = new[] { "LC_ALL", "LC_CTYPE", "LANG" }.Select(variable).FirstOrDefault(v => !string.IsNullOrEmpty(v));
        if (locale is null) return false;
        return locale.Contains("UTF-8", StringComparison.OrdinalIgnoreCase) || locale.Contains("utf8", StringComparison.OrdinalIgnoreCase);
    }
}
