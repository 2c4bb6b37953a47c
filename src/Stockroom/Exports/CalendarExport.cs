using System.Security.Cryptography;
using System.Text;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Stockroom.Views;

namespace Stockroom.Exports;

/// <summary>
/// What is due as an iCalendar (RFC 5545): one whole-day event for each thing, on the day it fell due. The same book and day
/// give the same bytes: the identifier of an event comes from the container and what is due, its stamp from the last entry.
/// </summary>
internal static class CalendarExport
{
    private const string Product = "-//Stockroom//what is due//EN";

    /// <summary>The calendar.</summary>
    /// <param name="due">What is due.</param>
    /// <param name="book">The book's identity.</param>
    /// <param name="stamp">When the book was last changed.</param>
    public static byte[] Of(IEnumerable<DueLine> due, string book, DateTimeOffset stamp)
    {
        var calendar = new Calendar { ProductId = Product };
        var utc = new CalDateTime(stamp.UtcDateTime);
        foreach (var item in due.OrderBy(d => d.Since).ThenBy(d => d.Container, StringComparer.Ordinal).ThenBy(d => d.What, StringComparer.Ordinal))
        {
            calendar.Events.Add(new CalendarEvent
            {
                Uid = $"{item.Container}-{Short(item.What)}-{book}@stockroom",
                DtStamp = utc,
                Start = new CalDateTime(item.Since.Year, item.Since.Month, item.Since.Day),
                Summary = Plain($"{item.What}: {item.Container} {item.Content}"),
                Description = Plain(item.Because) + "\n" + Plain($"Source: {item.Source}"),
                Location = Plain(item.Place),
                Transparency = TransparencyType.Transparent,
            });
        }

        var text = new CalendarSerializer().SerializeToString(calendar) ?? "";
        return Encoding.UTF8.GetBytes(ContentLines.Folded(text));
    }

    private static string Short(string what) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(what)).AsSpan(0, 6));

    // Control characters have no place in iCalendar text but for the line end, which is escaped (RFC 5545, 3.3.11); other
    // programs part lines at U+2028, and a mark that steers the direction of text would go on behind it.
    private static string Plain(string text) => string.Concat(text.EnumerateRunes().Select(r => Verbs.ShownText.IsHidden(r) ? " " : r.ToString()));
}
