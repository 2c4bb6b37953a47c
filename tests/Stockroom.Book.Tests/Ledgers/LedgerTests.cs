using Stockroom.Book.Encoding;
using Stockroom.Book.Entries;

namespace Stockroom.Book.Tests.Ledgers;

public sealed class LedgerTests
{
    [Fact]
    public void Append_TwoTransactions_NumbersRunOnAndEachEntryCarriesTheHashOfTheOneBefore()
    {
        var book = new SampleBook();
        book.Receive();
        var entries = book.Book.Ledger.Entries;

        Assert.Equal(Enumerable.Range(1, 6).Select(n => (long)n), entries.Select(e => e.Number));
        Assert.Equal([1, 1, 1, 1, 1, 2], entries.Select(e => e.Transaction));
        for (var i = 1; i < entries.Count; i++)
            Assert.Equal(EntryCodec.HashOf(entries[i - 1]), entries[i].Previous);
        Assert.Equal(EntryCodec.HashOf(entries[^1]), book.Book.Ledger.HeadHash);
    }

    [Fact]
    public void Append_OneOfTwoEntriesCannotBe_BooksNeither()
    {
        var book = new SampleBook();
        var id = book.Receive();
        book.Refused(
            new Weighed { HappenedAt = SampleBook.Now, Container = id, GrossGrams = 300 },
            new Weighed { HappenedAt = SampleBook.Now, Container = id, GrossGrams = -1 });
        Assert.Empty(book.State.ContainerCalled(id).Weighings);
    }

    [Fact]
    public void Undo_OfTheLastTransaction_GivesTheStateBeforeItAndKeepsTheLines()
    {
        var book = new SampleBook();
        var id = book.Receive();
        var before = book.State.ContainerCalled(id);
        book.Append(new Drawn { HappenedAt = SampleBook.Now, Container = id, Quantity = "5 g", Grams = 5 });
        book.Book.Append(book.Book.Ledger.Undo("Ada", "wrong bottle", SampleBook.Now));

        Assert.Equal(100m, book.State.ContainerCalled(id).NetGrams);
        Assert.Equal(before.History, book.State.ContainerCalled(id).History);
        Assert.Equal(8, book.Book.Ledger.Entries.Count);
    }

    [Fact]
    public void Undo_Twice_TakesBackTheTwoLastTransactions()
    {
        var book = new SampleBook();
        var id = book.Receive();
        book.Append(new Opened { HappenedAt = SampleBook.Now, Container = id });
        book.Book.Append(book.Book.Ledger.Undo("Ada", "slip", SampleBook.Now));
        book.Book.Append(book.Book.Ledger.Undo("Ada", "slip", SampleBook.Now));
        Assert.DoesNotContain(id, book.State.Containers.Keys);
    }

    [Fact]
    public void Undo_OfAReceipt_NeverGivesTheIdOutAgain()
    {
        var book = new SampleBook();
        var id = book.Receive();
        book.Book.Append(book.Book.Ledger.Undo("Ada", "slip", SampleBook.Now));
        Assert.NotEqual(id, book.State.NewId());
        Assert.NotEqual(id, Book.Ledgers.Ledger.Of("x", book.Book.Ledger.Entries).State.NewId());
    }

    [Fact]
    public void Undo_WhenALaterEntryRestsOnIt_IsRefusedAndNamesThatEntry()
    {
        var book = new SampleBook();
        var id = book.Receive();
        book.Append(new Opened { HappenedAt = SampleBook.Now, Container = id });
        var message = book.Refused(book.Book.Ledger.Undo("Ada", "slip", SampleBook.Now, transaction: 2));
        Assert.Contains("transaction 2 cannot be undone: entry 7 (opened, 2026-05-20) rests on it", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Undo_OfACorrectedTransaction_IsRefusedUntilTheCorrectionIsUndone()
    {
        var book = new SampleBook();
        var id = book.Receive();
        book.Append(new Corrected { HappenedAt = SampleBook.Now, Entry = 6, Changes = [new FieldChange("net_g", "90")], Reason = "misread" });
        book.Refused(book.Book.Ledger.Undo("Ada", "slip", SampleBook.Now, transaction: 2));
        book.Book.Append(book.Book.Ledger.Undo("Ada", "slip", SampleBook.Now));
        Assert.Equal(100m, book.State.ContainerCalled(id).NetGrams);
        book.Book.Append(book.Book.Ledger.Undo("Ada", "slip", SampleBook.Now));
        Assert.Empty(book.State.Containers);
    }

    [Fact]
    public void Undo_OfWhatIsUndoneOrIsAnUndoingOrDoesNotExist_IsRefused()
    {
        var book = new SampleBook();
        book.Receive();
        book.Book.Append(book.Book.Ledger.Undo("Ada", "slip", SampleBook.Now));
        Assert.Contains("already undone", book.Refused(book.Book.Ledger.Undo("Ada", "x", SampleBook.Now, 2)), StringComparison.Ordinal);
        Assert.Contains("itself an undoing", book.Refused(book.Book.Ledger.Undo("Ada", "x", SampleBook.Now, 3)), StringComparison.Ordinal);
        Assert.Contains("no transaction 9", book.Refused(book.Book.Ledger.Undo("Ada", "x", SampleBook.Now, 9)), StringComparison.Ordinal);
    }

    [Fact]
    public void Append_BackdatedDraw_CountsOnItsDayAndIsRefusedIfALaterDrawWouldNotHold()
    {
        var book = new SampleBook();
        var id = book.Receive(grams: 100m);
        book.Append(new Drawn { HappenedAt = SampleBook.Day(2), Container = id, Quantity = "80 g", Grams = 80 });
        var message = book.Refused(new Drawn { HappenedAt = SampleBook.Day(5), Container = id, Quantity = "50 g", Grams = 50 });
        Assert.Contains("entry 7 (drawn, 2026-05-18) would no longer hold", message, StringComparison.Ordinal);

        book.Append(new Drawn { HappenedAt = SampleBook.Day(5), Container = id, Quantity = "15 g", Grams = 15 });
        Assert.Equal([15m, 80m], book.State.ContainerCalled(id).Draws.Select(d => d.Grams));
        Assert.Equal(5m, book.State.ContainerCalled(id).NetGrams);
    }

    [Fact]
    public void StateOn_ADay_SeparatesWhatHadHappenedFromWhatHadBeenBooked()
    {
        var book = new SampleBook();
        var id = book.Receive(daysAgo: 30);
        book.Append(new Drawn { HappenedAt = SampleBook.Day(10), Container = id, Quantity = "40 g", Grams = 40 });
        var ledger = book.Book.Ledger;

        Assert.Equal(100m, ledger.StateOn(happenedBy: Date(11)).ContainerCalled(id).NetGrams);
        Assert.Equal(60m, ledger.StateOn(happenedBy: Date(10)).ContainerCalled(id).NetGrams);
        Assert.Empty(ledger.StateOn(happenedBy: Date(31)).Containers);
        Assert.Empty(ledger.StateOn(recordedBy: Date(1)).Containers);
        Assert.Equal(60m, ledger.StateOn(recordedBy: Date(0)).ContainerCalled(id).NetGrams);
    }

    [Fact]
    public void StateOn_ADayBeforeACorrectionWasBooked_StillCountsTheCorrection()
    {
        var book = new SampleBook();
        var id = book.Receive(daysAgo: 30, grams: 100m);
        book.Append(new Corrected { HappenedAt = SampleBook.Now, Entry = 6, Changes = [new FieldChange("net_g", "90")], Reason = "misread" });
        Assert.Equal(90m, book.Book.Ledger.StateOn(happenedBy: Date(20)).ContainerCalled(id).NetGrams);
    }

    private static DateOnly Date(int daysAgo) => DateOnly.FromDateTime(SampleBook.Day(daysAgo).DateTime);
}
