using Microsoft.Extensions.Time.Testing;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;

namespace Stockroom.Storage.Tests;

public sealed class ClockTests
{
    [Theory]
    [InlineData(-30, true)]
    [InlineData(-60, true)]
    [InlineData(-61, false)]
    [InlineData(-60 * 24 * 3650, false)]
    [InlineData(0, true)]
    [InlineData(60 * 24 * 400, true)]
    public void Append_ClockSetBackByMinutes_IsRefusedBeyondAnHourAndGoesOnWhenItIsRight(int minutes, bool isBooked)
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var clock = new FakeTimeProvider(BookOnDisk.Now.AddMinutes(minutes));
        using (var book = StockBookFolder.Open(disk.Folder, clock: clock))
        {
            if (isBooked)
            {
                BookADay(book);
                var (before, booked) = (book.Ledger.Entries[^2], book.Ledger.Entries[^1]);
                Assert.Equal(minutes < 0 ? before.RecordedAt : clock.GetLocalNow(), booked.RecordedAt);
                Assert.Equal(minutes < 0, book.Messages.Any(m => m.Contains("entries carry the time of that one", StringComparison.Ordinal)));
            }
            else
            {
                var refusal = Assert.Throws<BookUnavailableException>(() => BookADay(book));
                Assert.Equal(BookFault.Clock, refusal.Fault);
                Assert.Contains("entry 11 was booked on 2026-05-20 14:30", refusal.Message, StringComparison.Ordinal);
                Assert.Equal(11, book.Ledger.Entries.Count);
                clock.AdjustTime(BookOnDisk.Now.AddMinutes(1));
                BookADay(book);
            }
        }

        using var again = disk.Open();
        Assert.Equal(12, again.Ledger.Entries.Count);
    }

    private static void BookADay(StockBook book) =>
        book.Append(new Transaction("Ada", new Opened { HappenedAt = BookOnDisk.Now, Container = book.Ledger.State.Present.First().Id }));
}
