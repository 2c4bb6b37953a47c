using System.Globalization;

namespace Stockroom.Chemistry.Quantities;

/// <summary>
/// An amount as the keeper typed it: "20 mL", "1.5 kg". Kept exactly; a volume becomes a mass only with a density.
/// </summary>
/// <param name="Text">The words as typed, trimmed.</param>
/// <param name="Value">Grams for a mass, millilitres for a volume; above zero.</param>
/// <param name="IsVolume">True for a volume.</param>
public sealed record TypedAmount(string Text, decimal Value, bool IsVolume)
{
    // Factors to gram or millilitre, exact by definition of the SI prefixes and of the litre.
    private static readonly Dictionary<string, (decimal Factor, bool Volume)> Units = new(StringComparer.Ordinal)
    {
        ["µg"] = (0.000001m, false),
        ["ug"] = (0.000001m, false),
        ["mg"] = (0.001m, false),
        ["g"] = (1m, false),
        ["kg"] = (1000m, false),
        ["µL"] = (0.001m, true),
        ["uL"] = (0.001m, true),
        ["mL"] = (1m, true),
        ["ml"] = (1m, true),
        ["cm3"] = (1m, true),
        ["cL"] = (10m, true),
        ["cl"] = (10m, true),
        ["dL"] = (100m, true),
        ["L"] = (1000m, true),
        ["l"] = (1000m, true),
    };

    /// <summary>Reads a number and a unit of mass or volume.</summary>
    /// <param name="text">Such as "20 mL".</param>
    /// <param name="amount">The amount, where the text is one.</param>
    /// <param name="problem">What is wrong, where it is not.</param>
    public static bool TryParse(string text, out TypedAmount amount, out string problem)
    {
        amount = new TypedAmount("", 0, false);
        var words = text.Trim();
        var end = 0;
        while (end < words.Length && (char.IsAsciiDigit(words[end]) || words[end] is '.' or '-' or '+' or ','))
            end++;
        if (!decimal.TryParse(words[..end], NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number))
        {
            problem = $"'{text}' is not an amount; write a number and a unit, for example 20 mL or 3.5 g";
            return false;
        }

        var unit = words[end..].Trim().Replace('\u03BC', '\u00B5');
        if (!Units.TryGetValue(unit, out var known))
        {
            problem = unit.Length == 0
                ? $"'{text}' has no unit; write for example {words} g or {words} mL"
                : $"'{unit}' in '{text}' is not a unit of mass or volume; known are mg, g, kg, mL, L";
            return false;
        }

        if (number <= 0)
        {
            problem = $"'{text}' must be above zero";
            return false;
        }

        if (number > 1_000_000_000m)
        {
            problem = $"'{text}' is more than any stock holds";
            return false;
        }

        amount = new TypedAmount(words, number * known.Factor, known.Volume);
        problem = "";
        return true;
    }

    public override string ToString() => Text;
}
