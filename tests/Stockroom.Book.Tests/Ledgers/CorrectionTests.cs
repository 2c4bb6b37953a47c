using Stockroom.Book.Entries;

namespace Stockroom.Book.Tests.Ledgers;

public sealed class CorrectionTests
{
    [Fact]
    public void Corrected_SeveralFields_TakeTheirNewValuesAndTheLedgerKeepsTheOld()
    {
        var (book, id) = Booked();
        Correct(book, 6, ("net_g", "93.75"), ("quantity", "30 mL"), ("lot.supplier", "another shop"), ("happened_at", "2026-04-01T09:00:00+02:00"));

        var container = book.State.ContainerCalled(id);
        Assert.Equal(93.75m - 80m, container.NetGrams);
        Assert.Equal("30 mL", container.Quantity);
        Assert.Equal("another shop", container.Lot.Supplier);
        Assert.Equal(new DateOnly(2026, 4, 1), container.ReceivedOn);
        Assert.Equal(100m, ((Received)book.Book.Ledger.Entries[5]).NetGrams);
        Assert.Equal([6, 7, 10], container.History);
    }

    [Fact]
    public void Corrected_Twice_TheLaterCounts()
    {
        var (book, id) = Booked();
        Correct(book, 6, ("net_g", "93"));
        Correct(book, 6, ("net_g", "94"));
        Assert.Equal(94m - 80m, book.State.ContainerCalled(id).NetGrams);
    }

    [Fact]
    public void Corrected_ToNoValue_TakesTheValueAway()
    {
        var (book, id) = Booked();
        Correct(book, 6, ("net_g", null));
        Assert.Null(book.State.ContainerCalled(id).NetGrams);
    }

    [Fact]
    public void Corrected_AFieldOfANestedValueThatWasAbsent_MakesIt()
    {
        var (book, id) = Booked();
        Correct(book, 6, ("density.g_ml", "3.1"), ("density.source", "the bottle's label"));
        Assert.Equal(3.1m, book.State.ContainerCalled(id).Density!.GramsPerMillilitre);
    }

    [Theory]
    [InlineData(6, "gros_g", "5", "has no field 'gros_g'; it has: ")]
    [InlineData(6, "net_g", "lots", "'net_g' is 'lots', not a number such as 12.5")]
    [InlineData(6, "net_g", "-3", "a net mass of -3 g cannot be; it must be above 0 g")]
    [InlineData(6, "net_g", "10", "entry 7 (drawn, 2026-05-18) would no longer hold")]
    [InlineData(6, "container", "K4T7X", "stays as it was booked")]
    [InlineData(6, "previous", "00", "stays as it was booked")]
    [InlineData(6, "happened_at", "2026-05-19T12:00:00+02:00", "entry 7 (drawn, 2026-05-18) would no longer hold")]
    [InlineData(6, "happened_at", "2027-05-19T12:00:00+02:00", "lies in the future")]
    [InlineData(6, "to", "attic", "there is no place 'attic'")]
    [InlineData(99, "net_g", "5", "there is no entry 99 to correct")]
    public void Corrected_WithWhatCannotBe_IsRefusedInOneLine(long entry, string field, string value, string expected)
    {
        var (book, _) = Booked();
        var message = book.Refused(new Corrected { HappenedAt = SampleBook.Now, Entry = entry, Changes = [new FieldChange(field, value)], Reason = "slip" });
        Assert.Contains(expected, message, StringComparison.Ordinal);
    }

    [Fact]
    public void Corrected_ACorrection_IsRefusedAndPointsAtTheEntryItSpeaksOf()
    {
        var (book, _) = Booked();
        Correct(book, 6, ("net_g", "93"));
        var message = book.Refused(new Corrected { HappenedAt = SampleBook.Now, Entry = 8, Changes = [new FieldChange("reason", "x")], Reason = "slip" });
        Assert.Contains("entry 8 is a line corrected", message, StringComparison.Ordinal);
    }

    private static (SampleBook Book, ContainerId Id) Booked()
    {
        var book = new SampleBook();
        var id = book.Receive(grams: 100m);
        book.Append(new Drawn { HappenedAt = SampleBook.Day(2), Container = id, Quantity = "80 g", Grams = 80 });
        book.Append(new Corrected { HappenedAt = SampleBook.Now, Entry = 7, Changes = [new FieldChange("mass_g", "20")], Reason = "misread" });
        book.Book.Append(book.Book.Ledger.Undo("Ada", "was right", SampleBook.Now));
        return (book, id);
    }

    private static void Correct(SampleBook book, long entry, params (string Field, string? Value)[] changes) =>
        book.Append(new Corrected { HappenedAt = SampleBook.Now, Entry = entry, Changes = [.. changes.Select(c => new FieldChange(c.Field, c.Value))], Reason = "slip" });
}
