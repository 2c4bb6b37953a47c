using System.Globalization;

namespace Stockroom.Verbs;

/// <summary>Numbers as typed on the command line, kept exactly.</summary>
internal static class Numbers
{
    /// <summary>A mass in grams: "12.5" or "12.5 g". Null where nothing was typed.</summary>
    public static decimal? Grams(string? text, string what)
    {
        if (text is null)
            return null;
        var words = text.Trim();
        if (words.EndsWith('g') && !words.EndsWith("kg", StringComparison.Ordinal) && !words.EndsWith("mg", StringComparison.Ordinal))
            words = words[..^1].TrimEnd();
        if (!decimal.TryParse(words, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var grams))
            throw RefusedException.Words($"'{text}' is not {what} in grams; write for example 132.75");
        return grams > 0 ? grams : throw RefusedException.Words($"{what} of {words} g must be above zero");
    }

    /// <summary>A percentage above 0 and below 100, with or without its sign. Null where nothing was typed.</summary>
    public static decimal? Percent(string? text, string what)
    {
        if (Plain(text?.Trim().TrimEnd('%'), $"{what} in per cent") is not { } percent)
            return null;
        return percent is > 0 and < 100 ? percent : throw RefusedException.Words($"{what} of {percent} % cannot be; write more than 0 and less than 100");
    }

    /// <summary>From the coolest to the warmest, in kelvin: 0 to 100. Null where nothing was typed.</summary>
    public static decimal? Swing(string? text)
    {
        if (Plain(text, "a swing in kelvin") is not { } kelvins)
            return null;
        return kelvins is >= 0 and <= 100 ? kelvins : throw RefusedException.Words($"a swing of {kelvins} K cannot be; write 0 to 100, from the coolest to the warmest");
    }

    /// <summary>A plain number of some quantity. Null where nothing was typed.</summary>
    public static decimal? Plain(string? text, string what)
    {
        if (text is null)
            return null;
        return decimal.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value)
            ? value
            : throw RefusedException.Words($"'{text}' is not {what}; write a number");
    }
}
