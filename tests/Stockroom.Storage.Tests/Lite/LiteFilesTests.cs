using Stockroom.Storage.Tests.Disks;

namespace Stockroom.Storage.Tests.Lite;

public sealed class LiteFilesTests
{
    [Fact]
    public void Open_LiteDbBehind_ReplaysWhatItLacksAndSaysSo()
    {
        using var disk = new BookOnDisk();
        Dictionary<string, byte[]> early;
        using (var book = disk.Make(new RehearsedDisk()))
        {
            BookOnDisk.Receive(book);
            early = disk.Bytes();
            BookOnDisk.Receive(book);
            BookOnDisk.Receive(book);
        }

        var journal = File.ReadAllBytes(disk.Journal);
        disk.PutBack(early);
        File.WriteAllBytes(disk.Journal, journal);
        var report = StockBookFolder.Verify(disk.Folder);
        Assert.True(report.Holds);
        Assert.Contains("lacks the last 4 entries", Assert.Single(report.Notes), StringComparison.Ordinal);
        using (var book = disk.Open())
        {
            Assert.Contains("4 entries of the journal were missing", Assert.Single(book.Messages), StringComparison.Ordinal);
            Assert.Equal(7, book.Ledger.Entries.Count);
        }

        using var again = disk.Open();
        Assert.Empty(again.Messages);
    }

    [Fact]
    public void Open_LiteDbAhead_IsRefusedAndNothingChanges()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose(transactions: 4);
        var lines = File.ReadAllLines(disk.Journal);
        File.WriteAllText(disk.Journal, string.Concat(lines[..^1].Select(l => l + "\n")));
        var before = File.ReadAllBytes(disk.Journal);
        var refusal = disk.Refused();
        Assert.Equal(BookFault.Damaged, refusal.Fault);
        Assert.Contains("the LiteDB file has 7 entries and the journal 5", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(disk.Journal));
        Assert.Contains("has 7 entries and the journal 5", disk.Refused(readOnly: true).Message, StringComparison.Ordinal);
        using (var reader = StockBookFolder.OpenDamaged(disk.Folder))
        {
            Assert.Contains("has 7 entries and the journal 5", reader.Damage[0], StringComparison.Ordinal);
            Assert.Contains("entries 6 to 7 are shown from the LiteDB file", reader.Damage[1], StringComparison.Ordinal);
            Assert.Equal(7, reader.Ledger.Entries.Count);
            Assert.Contains("is DAMAGED and opens to read only: ", Assert.Single(reader.Messages), StringComparison.Ordinal);
            Assert.Throws<BookUnavailableException>(() => BookOnDisk.Receive(reader));
        }

        Assert.False(StockBookFolder.Verify(disk.Folder).Holds);
    }

    [Fact]
    public void Open_LiteDbAheadOfATornLine_IsRefusedAndTheTornLineStays()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose(transactions: 4);
        var torn = File.ReadAllBytes(disk.Journal)[..^20];
        File.WriteAllBytes(disk.Journal, torn);
        Assert.Equal(BookFault.Damaged, disk.Refused().Fault);
        Assert.Equal(torn, File.ReadAllBytes(disk.Journal));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Open_LiteDbMissingOrEmpty_IsBuiltAnewFromTheJournalAndSaysSo(bool empty)
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        File.Delete(disk.Lite);
        if (empty)
            File.WriteAllBytes(disk.Lite, []);
        using (var reader = disk.Open(readOnly: true))
            Assert.Contains("missing or unreadable", Assert.Single(reader.Messages), StringComparison.Ordinal);
        using (var book = disk.Open())
        {
            Assert.Contains("built anew from the journal (11 entries)", Assert.Single(book.Messages), StringComparison.Ordinal);
            Assert.True(book.Verify().Holds);
            BookOnDisk.Receive(book);
        }

        using var again = disk.Open();
        Assert.Empty(again.Messages);
        Assert.Equal(13, again.Ledger.Entries.Count);
    }

    [Fact]
    public void Open_LiteDbUnreadable_IsKeptAsideAndBuiltAnew()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var bytes = File.ReadAllBytes(disk.Lite);
        bytes.AsSpan(8192).Fill(0xEE);
        File.WriteAllBytes(disk.Lite, bytes);
        using var book = disk.Open();
        Assert.Equal(2, book.Messages.Count);
        Assert.True(File.Exists(disk.Lite + ".unreadable-1"));
        Assert.True(book.Verify().Holds);
    }

    [Fact]
    public void Open_AFileThatIsNotLiteDbs_IsSetAsideByteForByteAndTold()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var letter = new byte[3 * 8192];
        letter.AsSpan().Fill((byte)'x');
        var n = 0;
        foreach (var content in new[] { "a letter"u8.ToArray(), letter })
        {
            File.WriteAllBytes(disk.Lite, content);
            using (var book = disk.Open())
            {
                Assert.Contains($"kept as book.litedb.unreadable-{++n}", book.Messages[0], StringComparison.Ordinal);
                Assert.True(book.Verify().Holds);
            }

            Assert.Equal(content, File.ReadAllBytes($"{disk.Lite}.unreadable-{n}"));
            using var again = disk.Open();
            Assert.Empty(again.Messages);
        }
    }

    [Fact]
    public void Open_TheLiteDbOfAnotherBook_IsRefused()
    {
        using var disk = new BookOnDisk();
        using var other = new BookOnDisk();
        disk.MakeAndClose();
        other.MakeAndClose();
        File.Copy(other.Lite, disk.Lite, overwrite: true);
        Assert.Contains("belongs to another book", disk.Refused().Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_ARecordAlteredInLiteDb_IsRefusedWithTheNumberOfItsEntry()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose(transactions: 4);
        var bytes = File.ReadAllBytes(disk.Lite);
        var old = "\"net_g\":100"u8;
        var at = bytes.AsSpan().IndexOf(old);
        Assert.True(at > 0);
        "\"net_g\":900"u8.CopyTo(bytes.AsSpan(at));
        File.WriteAllBytes(disk.Lite, bytes);
        var refusal = disk.Refused();
        Assert.Equal(BookFault.Damaged, refusal.Fault);
        Assert.Matches("entry [246] in the LiteDB file is not the journal's: its text does not fit its hash", refusal.Message);
        Assert.Contains(StockBookFolder.Verify(disk.Folder).Findings, f => f.Contains("its text does not fit its hash", StringComparison.Ordinal));
    }
}
