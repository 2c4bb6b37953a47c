using CsCheck;
using Stockroom.Book;
using Stockroom.Book.Encoding;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Storage.Tests.Disks;

namespace Stockroom.Storage.Tests;

/// <summary>Random sequences of bookings, undoings, closings, kills and losses, against a book that is kept nowhere.</summary>
public sealed class StockBookModelTests
{
    private enum Act
    {
        Receive = 0,
        Draw,
        Weigh,
        Undo,
        CloseAndOpen,
        Kill,
        KillInTheMiddleOfALine,
        LoseLiteDb,
    }

    [Fact]
    public void Book_RandomActs_IsAlwaysEqualToTheOneInMemory() =>
        Gen.Select(Gen.Int[0, 7], Gen.Int[0, 99]).List[1, 30].Sample(
            steps =>
            {
                using var folder = new BookOnDisk();
                var model = new MemoryStockBook(TimeProvider.System);
                var book = folder.Make(new RehearsedDisk { SkipsSyncs = true });
                try
                {
                    model.Append(new Transaction("Ada", [.. book.Ledger.Entries]));
                    foreach (var (act, amount) in steps)
                    {
                        book = Do(folder, book, model, (Act)act, amount);
                        Assert.Equal(Texts(model.Ledger), Texts(book.Ledger));
                        Assert.True(book.Verify().Holds);
                    }
                }
                finally
                {
                    book.Dispose();
                }
            },
            writeLine: TestContext.Current.TestOutputHelper!.WriteLine,
            iter: 40);

    [Fact]
    public void Append_MoreThanLiteDbsLogHolds_IsAllThereAfterwards()
    {
        using var folder = new BookOnDisk();
        var emptied = 0;
        var disk = new RehearsedDisk { SkipsSyncs = true };
        disk.After = (call, file) => emptied += call == DiskCall.SetLength && file == "book.litedb-log" ? 1 : 0;
        Dictionary<string, byte[]> killed;
        using (var book = folder.Make(disk))
        {
            for (var i = 0; i < 700; i++)
                BookOnDisk.Receive(book, $"content {i}");
            Assert.True(emptied > 0, "LiteDB's log was never emptied: the test no longer tries what it should");
            killed = folder.Bytes();
        }

        folder.PutBack(killed);
        using var again = folder.Open();
        Assert.Empty(again.Messages);
        Assert.Equal(1401, again.Ledger.Entries.Count);
        Assert.True(again.Verify().Holds);
    }

    private static StockBook Do(BookOnDisk folder, StockBook book, MemoryStockBook model, Act act, int amount)
    {
        var id = book.State().Containers.Keys.Order().ElementAtOrDefault(amount % 3);
        switch (act)
        {
            case Act.Receive:
                BookOnDisk.Receive(book, $"content {amount}", amount + 1);
                model.Append(new Transaction("Ada", [.. book.Ledger.Entries.TakeLast(2)]));
                return book;
            case Act.Draw:
                Both(book, model, new Transaction("Ada", new Drawn { HappenedAt = BookOnDisk.Now, Container = id, Quantity = "some", Grams = amount }));
                return book;
            case Act.Weigh:
                Both(book, model, new Transaction("Ada", new Weighed { HappenedAt = BookOnDisk.Now.AddDays(-amount % 2), Container = id, GrossGrams = amount }));
                return book;
            case Act.Undo when !book.State().Containers.IsEmpty:
                Both(book, model, book.Ledger.Undo("Ada", "slip", BookOnDisk.Now));
                return book;
            case Act.CloseAndOpen:
                book.Dispose();
                break;
            case Act.Kill:
            case Act.KillInTheMiddleOfALine:
                var left = folder.Bytes();
                book.Dispose();
                folder.PutBack(left);
                if (act == Act.KillInTheMiddleOfALine)
                    File.AppendAllText(folder.Journal, File.ReadAllLines(folder.Journal)[^1][..amount]);
                break;
            case Act.LoseLiteDb:
                book.Dispose();
                File.Delete(folder.Lite);
                break;
        }

        return act >= Act.CloseAndOpen ? folder.OpenOn(new RehearsedDisk { SkipsSyncs = true }) : book;
    }

    private static void Both(StockBook book, MemoryStockBook model, Transaction transaction)
    {
        var refused = Record.Exception(() => book.Append(transaction));
        var refusedByModel = Record.Exception(() => model.Append(transaction));
        Assert.Equal(refusedByModel?.Message, refused?.Message);
        if (refused is not null)
            Assert.IsType<BookRefusal>(refused);
    }

    // What was booked, without what differs from book to book: the chain's beginning and the time of booking.
    private static List<string> Texts(Ledger ledger) =>
        [.. ledger.Entries.Select(e => EntryCodec.Encode(e with { Previous = "", RecordedAt = default }))];
}

internal static class StockBookStates
{
    public static BookState State(this StockBook book) => book.Ledger.State;
}
