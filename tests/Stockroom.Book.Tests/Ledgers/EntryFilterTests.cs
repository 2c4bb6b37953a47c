using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;

namespace Stockroom.Book.Tests.Ledgers;

public sealed class EntryFilterTests
{
    [Fact]
    public void Fits_NothingWanted_LetsEveryEntryThrough()
    {
        var (book, _, _) = Booked();
        Assert.Equal(book.Book.Ledger.Entries, book.Book.Entries());
    }

    [Fact]
    public void Fits_AContainer_KeepsItsEntriesAndNoOthers()
    {
        var (book, first, second) = Booked();
        Assert.Equal([6, 8], Numbers(book, new EntryFilter { Container = first }));
        Assert.Equal([7, 9], Numbers(book, new EntryFilter { Container = second }));
    }

    [Fact]
    public void Fits_APlace_KeepsItsMakingAndWhatCameThere()
    {
        var (book, _, _) = Booked();
        Assert.Equal([4, 6, 7], Numbers(book, new EntryFilter { Place = "acid-1" }));
        Assert.Equal([5, 8], Numbers(book, new EntryFilter { Place = "acid-1-tray" }));
        Assert.Empty(Numbers(book, new EntryFilter { Place = "attic" }));
    }

    [Fact]
    public void Fits_AKind_KeepsOnlyThat()
    {
        var (book, _, _) = Booked();
        Assert.Equal([6, 7], Numbers(book, new EntryFilter { Kind = "received" }));
        Assert.Equal([8], Numbers(book, new EntryFilter { Kind = "moved" }));
    }

    [Theory]
    [InlineData(31, 0)]
    [InlineData(30, 2)]
    [InlineData(3, 2)]
    [InlineData(2, 3)]
    [InlineData(1, 4)]
    public void Fits_HappenedBy_CountsTheDayItself(int daysAgo, int expected)
    {
        var (book, _, _) = Booked();
        var by = DateOnly.FromDateTime(SampleBook.Day(daysAgo).DateTime);
        Assert.Equal(expected, Numbers(book, new EntryFilter { HappenedBy = by }).Count(n => n > 5));
    }

    [Fact]
    public void Fits_RecordedBy_CountsTheDayItself()
    {
        var (book, _, _) = Booked();
        var today = DateOnly.FromDateTime(SampleBook.Now.DateTime);
        Assert.Equal(9, Numbers(book, new EntryFilter { RecordedBy = today }).Count);
        Assert.Empty(Numbers(book, new EntryFilter { RecordedBy = today.AddDays(-1) }));
    }

    [Fact]
    public void Fits_TwoWishes_MustBothHold()
    {
        var (book, first, _) = Booked();
        Assert.Equal([8], Numbers(book, new EntryFilter { Container = first, Kind = "moved" }));
        Assert.Empty(Numbers(book, new EntryFilter { Container = first, Kind = "opened" }));
        Assert.Equal([6], Numbers(book, new EntryFilter { Container = first, Place = "acid-1" }));
        Assert.Equal([6], Numbers(book, new EntryFilter { Container = first, HappenedBy = DateOnly.FromDateTime(SampleBook.Day(3).DateTime) }));
    }

    private static (SampleBook Book, ContainerId First, ContainerId Second) Booked()
    {
        var book = new SampleBook();
        var first = book.Receive(to: "acid-1");
        var second = book.Receive("iodine", to: "acid-1");
        book.Append(new Moved { HappenedAt = SampleBook.Day(2), Container = first, To = "acid-1-tray" });
        book.Append(new Opened { HappenedAt = SampleBook.Day(1), Container = second });
        return (book, first, second);
    }

    private static List<long> Numbers(SampleBook book, EntryFilter filter) => [.. book.Book.Entries(filter).Select(e => e.Number)];
}
