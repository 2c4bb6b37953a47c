using System.Text;
using Ical.Net;
using Stockroom.Exports;
using Stockroom.Tests.Verbs;
using Stockroom.Views;

namespace Stockroom.Tests.Imports;

/// <summary>The calendar of what is due, read back by the letter of RFC 5545 and by the library.</summary>
public sealed class CalendarExportTests
{
    private static readonly DateTimeOffset Stamp = new(2026, 3, 1, 9, 30, 0, TimeSpan.FromHours(2));

    [Fact]
    public void Export_OfTheDemo_HasAnEventForEachThingDue()
    {
        using var keeper = Keeper.WithDemo();
        var file = Path.Combine(keeper.Folder, "due.ics");
        keeper.Run("export", file).Done();
        var due = keeper.Run("rounds", "--json").Done().Json.GetProperty("due").EnumerateArray().ToList();
        Assert.NotEmpty(due);
        var events = CalendarLines.Events(File.ReadAllBytes(file));
        Assert.Equal(
            due.Select(d => (d.GetProperty("since").GetString()!.Replace("-", "", StringComparison.Ordinal), $"{d.GetProperty("what").GetString()}: {d.GetProperty("id").GetString()} {d.GetProperty("content").GetString()}", d.GetProperty("because").GetString() + "\nSource: " + d.GetProperty("source").GetString())).Order(),
            events.Select(e => (e["DTSTART"], e["SUMMARY"], e["DESCRIPTION"])).Order());
        Assert.Equal(events.Count, events.Select(e => e["UID"]).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(due.Count, Calendar.Load(File.ReadAllText(file))!.Events.Count);
    }

    [Fact]
    public void Export_OnOtherDays_KeepsTheIdentifierOfWhatIsStillDue()
    {
        using var keeper = Keeper.WithDemo();
        var (first, later, again) = (Path.Combine(keeper.Folder, "a.ics"), Path.Combine(keeper.Folder, "b.ics"), Path.Combine(keeper.Folder, "c.ics"));
        keeper.Run("export", first).Done();
        keeper.Run("export", again).Done();
        keeper.Run("export", later, "--as-of", keeper.Today.AddDays(20).ToString("yyyy-MM-dd")).Done();
        Assert.Equal(File.ReadAllBytes(first), File.ReadAllBytes(again));
        Assert.Empty(CalendarLines.Events(File.ReadAllBytes(first)).Where(e => e["SUMMARY"].StartsWith("test", StringComparison.Ordinal)).Select(e => e["UID"])
            .Except(CalendarLines.Events(File.ReadAllBytes(later)).Select(e => e["UID"])));
    }

    [Theory]
    [InlineData("plain")]
    [InlineData("comma, semicolon; backslash \\ colon: \"quote\"")]
    [InlineData("ends with a backslash\\")]
    [InlineData("\\n is not a line end, \\, neither")]
    [InlineData("日本語の長い説明がここにあり、七十五オクテットを超えるまで続きますので、折り返しが必要になります。まだ続く。")]
    [InlineData("🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪🧪")]
    [InlineData("xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx x")]
    [InlineData("  blanks  within and before each fold                                                                  and behind it")]
    public void Of_AnyText_ReadsBackAsItWas(string text)
    {
        var line = new DueLine("K4T7X", text, text, text, new DateOnly(2026, 2, 3), text, text);
        var read = Assert.Single(CalendarLines.Events(CalendarExport.Of([line], "0123", Stamp)));
        Assert.Equal(($"{text}: K4T7X {text}", text, $"{text}\nSource: {text}"), (read["SUMMARY"], read["LOCATION"], read["DESCRIPTION"]));
        Assert.Equal(("20260203", "20260301T073000Z", "TRANSPARENT"), (read["DTSTART"], read["DTSTAMP"], read["TRANSP"]));
        Assert.Matches("^K4T7X-[0-9a-f]{12}-0123@stockroom$", read["UID"]);
    }

    [Fact]
    public void Of_TextThatWouldBreakALine_StaysWithinIt()
    {
        var line = new DueLine("K4T7X", "x\r\nEND:VEVENT\r\nBEGIN:VALARM", "\u001B[2J", "w\nEND:VCALENDAR", new DateOnly(2026, 2, 3), "b\u0085\u2028c", "s");
        var read = Assert.Single(CalendarLines.Events(CalendarExport.Of([line], "0123", Stamp)));
        Assert.Equal("w END:VCALENDAR: K4T7X x  END:VEVENT  BEGIN:VALARM", read["SUMMARY"]);
    }

    [Fact]
    public void Of_NothingDue_IsACalendarWithoutEvents() => Assert.Empty(CalendarLines.Events(CalendarExport.Of([], "0123", Stamp)));

    [Fact]
    public void Export_OtherEndings_AreRefused()
    {
        using var keeper = Keeper.WithSmallBook();
        Assert.Contains("FILE.json, FILE.csv or FILE.ics", keeper.Run("export", "x.xlsx").Refused(2), StringComparison.Ordinal);
        Assert.Contains("--places is for a .csv", keeper.Run("export", "x.ics", "--places").Refused(2), StringComparison.Ordinal);
        Assert.Contains("--as-of is for", keeper.Run("export", "x.json", "--as-of", "2026-01-01").Refused(2), StringComparison.Ordinal);
    }
}
