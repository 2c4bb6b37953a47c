using System.Globalization;

namespace Stockroom.Demo;

/// <summary>Reads a date of a collection file: "today", "14 months ago", or 2025-03-31.</summary>
internal static class RelativeDate
{
    /// <param name="text">The words of the cell.</param>
    /// <param name="today">The day that "ago" counts from.</param>
    /// <returns>The date, or null where the words are none.</returns>
    public static DateOnly? Read(string text, DateOnly today)
    {
        var words = text.Trim();
        if (words == "today")
            return today;
        if (words == "yesterday")
            return today.AddDays(-1);
        if (DateOnly.TryParseExact(words, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
            return date;
        var parts = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length != 3 || parts[2] != "ago" || !int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var count) || count > 5000)
            return null;
        return parts[1].TrimEnd('s') switch
        {
            "day" => today.AddDays(-count),
            "week" => today.AddDays(-7 * count),
            "month" => today.AddMonths(-count),
            "year" => count <= 300 ? today.AddYears(-count) : null,
            _ => null,
        };
    }
}
