using System.Globalization;
using System.Text.RegularExpressions;
using Stockroom.Book;

namespace Stockroom.Assessment.Recipes;

/// <summary>
/// A share as typed: a figure, or bounds, and the basis it is on. Both are in per cent by mass of the basis.
/// </summary>
/// <param name="Low">The least it can be; 0 for "below".</param>
/// <param name="High">The most it can be; null for "above" and for the rest.</param>
/// <param name="Basis">What the per cent are of; empty for the pure substance.</param>
/// <param name="Text">As typed.</param>
public sealed partial record TypedShare(decimal Low, decimal? High, string Basis, string Text)
{
    private static readonly string[] ByMass = ["", "w/w", "m/m", "wt", "wt%", "by mass", "by weight", "mass", "weight"];

    private static readonly Dictionary<string, decimal> MassUnits = new(StringComparer.Ordinal)
    {
        ["g/100 g"] = 1m,
        ["g/100g"] = 1m,
        ["g/kg"] = 0.1m,
        ["mg/g"] = 0.1m,
        ["mg/kg"] = 0.0001m,
    };

    public bool IsRest => Low == 0 && High is null;

    public bool IsOpen => High != Low;

    /// <summary>Reads "10", "10 %", "&gt;90 %", "&lt;5%", "10-20 %", "5% active chlorine", "50 g/kg", "rest".</summary>
    /// <exception cref="BookRefusal">It is no share by mass; the line says what would be right.</exception>
    public static TypedShare Read(string text, string of)
    {
        var words = text.Trim();
        if (words is "rest" or "balance")
            return new TypedShare(0, null, "", words);
        var match = Pattern().Match(words);
        if (!match.Success)
            throw new BookRefusal($"'{words}' of {of} is not per cent by mass of the pure substance; write a number above 0 and up to 100, with '>' or '<' where it is open");
        var (factor, basis) = Unit(match.Groups["unit"].Value.Trim(), words, of);
        var value = Number(match.Groups["value"].Value) * factor;
        var (low, high) = Bounds(match, value, factor);
        if (value <= 0 || value > 100 || high > 100 || high < low)
            throw new BookRefusal($"'{words}' of {of} is not per cent by mass of the pure substance; write a number above 0 and up to 100");
        return new TypedShare(low, high, basis, words);
    }

    private static (decimal Low, decimal? High) Bounds(Match match, decimal value, decimal factor)
    {
        if (match.Groups["high"].Success)
            return (value, Number(match.Groups["high"].Value) * factor);
        return match.Groups["bound"].Value switch
        {
            ">" or ">=" or "≥" => (value, null),
            "<" or "<=" or "≤" => (0, value),
            _ => (value, value),
        };
    }

    private static (decimal Factor, string Basis) Unit(string unit, string words, string of)
    {
        if (MassUnits.TryGetValue(unit, out var factor))
            return (factor, "");
        if (unit.Length > 0 && unit[0] != '%')
            throw new BookRefusal(NotByMass(words, of));
        var basis = unit.TrimStart('%').Trim().Trim('(', ')').Trim();
        if (Volume().IsMatch(basis))
            throw new BookRefusal(NotByMass(words, of));
        return (1m, Array.Exists(ByMass, b => string.Equals(b, basis, StringComparison.OrdinalIgnoreCase)) ? "" : basis);
    }

    /// <summary>The line for a share on a basis that cannot be converted.</summary>
    public static string NotByMass(string words, string of) =>
        $"'{words}' of {of} is not per cent by mass of the pure substance; what would be right is the mass of pure {of} in 100 g of the whole (g in 100 mL divided by the density in g/mL gives it), for example {of}=4%";

    private static decimal Number(string digits) => decimal.Parse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?<bound>>=|<=|>|<|≥|≤)?\s*(?<value>\d{1,9}(\.\d{1,12})?)(\s*%?\s*(-|–|to)\s*(?<high>\d{1,9}(\.\d{1,12})?))?\s*(?<unit>[^\d\s<>=,.-].*)?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Pattern();

    [GeneratedRegex(@"\b(v/v|w/v|m/v|v/w|vol|volume)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Volume();
}
