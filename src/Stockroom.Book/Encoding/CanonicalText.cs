using System.Globalization;

namespace Stockroom.Book.Encoding;

/// <summary>The one way in which a number, a day and a time are written in the ledger.</summary>
internal static class CanonicalText
{
    public const string DayFormat = "yyyy-MM-dd";
    public const string InstantFormat = "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFzzz";

    /// <summary>Shortest exact notation: no exponent, no trailing zeros, no sign on zero.</summary>
    public static string Of(decimal value)
    {
        if (value == 0)
            return "0";
        var text = value.ToString(CultureInfo.InvariantCulture);
        return text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;
    }

    public static string Of(DateOnly day) => day.ToString(DayFormat, CultureInfo.InvariantCulture);

    /// <summary>ISO 8601 with the offset it was given in.</summary>
    public static string Of(DateTimeOffset instant) => instant.ToString(InstantFormat, CultureInfo.InvariantCulture);

    public static bool TryDecimal(string text, out decimal value) =>
        decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value);

    public static bool TryDay(string text, out DateOnly day) =>
        DateOnly.TryParseExact(text, DayFormat, CultureInfo.InvariantCulture, DateTimeStyles.None, out day);

    public static bool TryInstant(string text, out DateTimeOffset instant) =>
        DateTimeOffset.TryParseExact(text, InstantFormat, CultureInfo.InvariantCulture, DateTimeStyles.None, out instant);

    /// <summary>False for text with half a surrogate pair, which no encoding can carry unchanged.</summary>
    public static bool IsWellFormed(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
                i++;
            else if (char.IsSurrogate(text[i]))
                return false;
        }

        return true;
    }
}
