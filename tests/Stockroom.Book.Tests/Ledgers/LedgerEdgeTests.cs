using Stockroom.Book.Encoding;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;

namespace Stockroom.Book.Tests.Ledgers;

/// <summary>The corners of a ledger: nothing in it, an entry about itself, entries that were read back and cannot be.</summary>
public sealed class LedgerEdgeTests
{
    [Fact]
    public void Of_NoEntries_BeginsAtTheBooksOwnHash()
    {
        var ledger = Ledger.Of("genesis", []);
        Assert.Equal("genesis", ledger.HeadHash);
        Assert.Equal(0, ledger.LastTransaction);
        Assert.Equal("there is nothing to undo", Assert.Throws<BookRefusal>(() => ledger.Undo("Ada", "slip", SampleBook.Now)).Message);
    }

    [Fact]
    public void Append_Nothing_IsRefused() =>
        Assert.Equal("there is nothing to book", new SampleBook().Refused());

    [Fact]
    public void Append_ATransaction_AnswersWithItsNumberAndTheTextOfEachEntry()
    {
        var ledger = new SampleBook().Book.Ledger;
        var id = ledger.State.NewId();
        var booking = ledger.Append(new Transaction("Ada", SampleBook.Receipt(id), new Opened { HappenedAt = SampleBook.Now, Container = id }), SampleBook.Now);

        Assert.Equal(2, booking.Transaction);
        Assert.Equal(booking.Entries.Select(EntryCodec.Encode), booking.Texts);
        Assert.Equal(2, booking.Texts.Count);
        Assert.Equal(2, booking.After.LastTransaction);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(7)]
    [InlineData(-1)]
    public void Append_ACorrectionOfNothingOrOfItself_IsRefused(long entry)
    {
        var book = new SampleBook();
        book.Receive();
        var message = book.Refused(new Corrected { HappenedAt = SampleBook.Now, Entry = entry, Changes = [new FieldChange("net_g", "5")], Reason = "slip" });
        Assert.Contains($"there is no entry {entry} to correct", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Append_ACorrectionOfTheLastEntry_IsFiledUnderItsContainer()
    {
        var book = new SampleBook();
        var id = book.Receive();
        var booked = book.Append(new Corrected { HappenedAt = SampleBook.Now, Entry = 6, Changes = [new FieldChange("net_g", "5")], Reason = "slip" });
        Assert.Equal(id, booked[0].Container);
    }

    [Fact]
    public void Append_AnUndoingOfItsOwnTransaction_IsRefused()
    {
        var book = new SampleBook();
        book.Receive();
        var message = book.Refused(new Undone { HappenedAt = SampleBook.Now, Undoes = 3, Reason = "slip" });
        Assert.Contains("there is no transaction 3 to undo", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Append_ACorrectionOfWhatIsUndone_IsRefusedAndNamesBoth()
    {
        var book = new SampleBook();
        book.Receive();
        book.Book.Append(book.Book.Ledger.Undo("Ada", "slip", SampleBook.Now));
        var message = book.Refused(new Corrected { HappenedAt = SampleBook.Now, Entry = 6, Changes = [new FieldChange("net_g", "5")], Reason = "slip" });
        Assert.Contains("entry 6, corrected by entry 8, is undone", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_EntriesThatCannotBe_NamesThemAndGoesOnBeingAppendedTo()
    {
        var (ledger, id) = ReadBackWithADrawOfTooMuch();

        Assert.Equal([7L], ledger.Problems.Keys);
        Assert.Equal(100m, ledger.State.ContainerCalled(id).NetGrams);
        var late = new Weighed { HappenedAt = SampleBook.Day(20), Container = id, GrossGrams = 300 };
        var after = ledger.Append(new Transaction("Ada", new Opened { HappenedAt = SampleBook.Day(4), Container = id }), SampleBook.Now).After;
        var later = after.Append(new Transaction("Ada", late), SampleBook.Now).After;
        Assert.Equal([7L], later.Problems.Keys);
        Assert.Single(later.State.ContainerCalled(id).Weighings);
    }

    [Fact]
    public void Append_ACorrectionOfAnEntryThatCouldNotBe_MendsIt()
    {
        var (ledger, id) = ReadBackWithADrawOfTooMuch();
        var mended = ledger.Append(
            new Transaction("Ada", new Corrected { HappenedAt = SampleBook.Now, Entry = 7, Changes = [new FieldChange("mass_g", "40")], Reason = "misread" }),
            SampleBook.Now).After;
        Assert.Empty(mended.Problems);
        Assert.Equal(60m, mended.State.ContainerCalled(id).NetGrams);
    }

    // As an altered file would be read: a draw of more than there is, stamped as if it had been booked.
    private static (Ledger Ledger, ContainerId Id) ReadBackWithADrawOfTooMuch()
    {
        var book = new SampleBook();
        var id = book.Receive();
        var entries = book.Book.Ledger.Entries;
        var draw = new Drawn
        {
            HappenedAt = SampleBook.Day(10),
            RecordedAt = SampleBook.Day(10),
            By = "Ada",
            Container = id,
            Quantity = "400 g",
            Grams = 400,
            Number = 7,
            Transaction = 3,
            Previous = EntryCodec.HashOf(entries[^1]),
        };
        return (Ledger.Of("genesis", entries.Add(draw)), id);
    }
}
