using System.Globalization;

namespace Stockroom.Verbs;

/// <summary>Reads a cover as typed: "water:40 mm", "sulfuric acid 98%:10 mm", "argon".</summary>
internal static class CoverWords
{
    public static (string? Name, decimal? DepthMillimetres) Read(string? text)
    {
        if (text is null)
            return (null, null);
        var cut = text.LastIndexOf(':');
        if (cut < 0)
            return (text.Trim(), null);
        var depth = text[(cut + 1)..].Trim();
        if (depth.EndsWith("mm", StringComparison.Ordinal))
            depth = depth[..^2].TrimEnd();
        return decimal.TryParse(depth, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var millimetres) && millimetres > 0
            ? (text[..cut].Trim(), millimetres)
            : throw RefusedException.Words($"'{text[(cut + 1)..].Trim()}' is not the depth of a cover; write for example water:40 mm");
    }
}
