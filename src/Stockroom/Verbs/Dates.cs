using System.CommandLine.Parsing;
using System.Globalization;

namespace Stockroom.Verbs;

/// <summary>Dates on the command line: ISO 8601 days.</summary>
internal static class Dates
{
    public static DateOnly? Parse(ArgumentResult result)
    {
        var text = result.Tokens[0].Value;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
            return date;
        result.AddError($"'{text}' is not a date; write for example 2026-03-31");
        return null;
    }

    /// <summary>The moment a thing happened: now for today, else noon of the day, with the offset of the keeper's clock.</summary>
    public static DateTimeOffset MomentOf(DateOnly? day, TimeProvider clock)
    {
        var now = clock.GetLocalNow();
        if (day is not { } date || date == DateOnly.FromDateTime(now.DateTime))
            return now;
        var noon = date.ToDateTime(new TimeOnly(12, 0));
        return new DateTimeOffset(noon, clock.LocalTimeZone.GetUtcOffset(noon));
    }

    public static string Iso(this DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    public static string Iso(this DateTimeOffset moment) => moment.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);
}
