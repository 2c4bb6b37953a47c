namespace Stockroom.Chemistry.Hazards;

/// <summary>The letters that name an effect (F fertility, D unborn child; small for the lesser category) or a route (i inhalation).</summary>
internal static class StatementLetters
{
    /// <summary>
    /// One code for several ingredients of the standing category and lesser ones beside it: H360D with H360F is H360FD,
    /// H360D with H361f is H360Df, H350i with H350 is H350.
    /// </summary>
    public static string Merge(IEnumerable<string> standing, IEnumerable<string> lesser)
    {
        var codes = standing.Distinct().Order(StringComparer.Ordinal).ToList();
        var stem = codes[0].Length >= 4 ? codes[0][..4] : codes[0];
        if (stem is not ("H360" or "H361"))
            return codes.Contains(stem) ? stem : codes[0];
        if (codes.Contains(stem))
            return stem;
        var letters = string.Concat(codes.Concat(lesser).Where(c => c.Length > 4).Select(c => c[4..]));
        var f = letters.Contains('F', StringComparison.Ordinal) ? "F" : letters.Contains('f', StringComparison.Ordinal) ? "f" : "";
        var d = letters.Contains('D', StringComparison.Ordinal) ? "D" : letters.Contains('d', StringComparison.Ordinal) ? "d" : "";
        return stem + (f == "f" && d == "D" ? "Df" : f + d);
    }
}
