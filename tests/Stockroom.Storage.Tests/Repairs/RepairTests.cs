using Stockroom.Book.Entries;
using Stockroom.Storage.Tests.Disks;

namespace Stockroom.Storage.Tests.Repairs;

public sealed class RepairTests
{
    [Fact]
    public void Repair_AWholeBook_IsTheSameLedgerAndLeavesTheOldAsItWas()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var before = disk.Bytes();
        var report = StockBookFolder.Repair(disk.Folder, disk.Beside("new.stockbook"));
        Assert.Equal((11, 0), (report.Entries, report.FromLite));
        Assert.Empty(report.Lost);
        Assert.Equal(before, disk.Bytes());
        using var repaired = StockBookFolder.Open(report.Folder);
        Assert.Equal(report.HeadHash, repaired.Ledger.HeadHash);
        Assert.Equal(before[disk.Journal], File.ReadAllBytes(Path.Combine(report.Folder, "journal.txt")));
        Assert.True(repaired.Verify().Holds);
        BookOnDisk.Receive(repaired);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(6)]
    public void Repair_ALineOfTheJournalAltered_TakesItFromLiteDbByteForByte(int line)
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var whole = File.ReadAllText(disk.Journal);
        var lines = whole.Split('\n');
        lines[line - 1] = lines[line - 1].Replace("Ada", "Eve", StringComparison.Ordinal);
        File.WriteAllText(disk.Journal, string.Join('\n', lines));
        var before = disk.Bytes();
        var report = StockBookFolder.Repair(disk.Folder, disk.Beside("new.stockbook"));
        Assert.Equal(11, report.Entries);
        Assert.True(report.FromLite > 0);
        Assert.StartsWith($"line {line} of the journal", Assert.Single(report.Lost), StringComparison.Ordinal);
        Assert.Equal(before, disk.Bytes());
        Assert.Equal(whole, File.ReadAllText(Path.Combine(report.Folder, "journal.txt")));
    }

    [Fact]
    public void Repair_JournalAlteredAndNoLiteDb_SavesWhatStandsBeforeAndNamesTheRest()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var lines = File.ReadAllLines(disk.Journal);
        lines[3] = lines[3].Replace("Ada", "Eve", StringComparison.Ordinal);
        File.WriteAllText(disk.Journal, string.Concat(lines.Select(l => l + "\n")));
        File.Delete(disk.Lite);
        var report = StockBookFolder.Repair(disk.Folder, disk.Beside("new.stockbook"));
        Assert.Equal(5, report.Entries);
        Assert.Equal(["line 4", "line 5", "line 6"], report.Lost.Select(l => l[..6]));
        using var repaired = StockBookFolder.Open(report.Folder);
        Assert.Equal(5, repaired.Ledger.Entries.Count);
    }

    [Fact]
    public void Repair_JournalCutShort_TakesTheRestFromLiteDb()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var whole = File.ReadAllBytes(disk.Journal);
        File.WriteAllBytes(disk.Journal, whole[..(whole.Length / 3)]);
        Assert.Equal(BookFault.Damaged, disk.Refused().Fault);
        var report = StockBookFolder.Repair(disk.Folder, disk.Beside("new.stockbook"));
        Assert.Equal(11, report.Entries);
        Assert.Equal(whole, File.ReadAllBytes(Path.Combine(report.Folder, "journal.txt")));
    }

    [Theory]
    [InlineData("")]
    [InlineData("{\"kind\":\"stock book\"}")]
    public void Repair_IdentityLost_TakesItFromLiteDbIfTheJournalFollowsIt(string identity)
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        File.WriteAllText(Path.Combine(disk.Folder, "book.json"), identity);
        var report = StockBookFolder.Repair(disk.Folder, disk.Beside("new.stockbook"));
        Assert.Equal(11, report.Entries);
        using var repaired = StockBookFolder.Open(report.Folder);
        Assert.Equal(BookOnDisk.Now, repaired.Identity.Created);
    }

    [Fact]
    public void Repair_IdentityAndLiteDbLost_IsRefusedInOneLine()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        File.WriteAllText(Path.Combine(disk.Folder, "book.json"), "");
        File.Delete(disk.Lite);
        var refusal = Assert.Throws<BookUnavailableException>(() => StockBookFolder.Repair(disk.Folder, disk.Beside("new.stockbook")));
        Assert.Contains("put back one of them", refusal.Message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(disk.Beside("new.stockbook")));
    }

    [Fact]
    public void Repair_WhereSomethingIs_IsRefusedAndChangesNothing()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var before = disk.Bytes();
        Assert.Equal(BookFault.AlreadyThere, Assert.Throws<BookUnavailableException>(() => StockBookFolder.Repair(disk.Folder, disk.Folder)).Fault);
        Assert.Equal(before, disk.Bytes());
    }

    [Fact]
    public void Repair_WhileTheBookIsOpenElsewhere_IsRefused()
    {
        using var disk = new BookOnDisk();
        using var book = disk.Make();
        Assert.Equal(BookFault.Locked, Assert.Throws<BookUnavailableException>(() => StockBookFolder.Repair(disk.Folder, disk.Beside("new.stockbook"))).Fault);
    }

    [Fact]
    public void OpenToRead_ALineAltered_NamesTheLineAndShowsTheRestFromLiteDb()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        AlterLine4(disk);
        Assert.Equal(BookFault.Damaged, disk.Refused(readOnly: true).Fault);
        using var reader = StockBookFolder.OpenDamaged(disk.Folder);
        Assert.Equal(11, reader.Ledger.Entries.Count);
        Assert.All(reader.Ledger.Entries, e => Assert.Equal("Ada", e.By));
        Assert.Equal("line 4 of its journal was altered: its text does not fit its hash; entries 1 to 5 in it can be believed, from 6 on none", reader.Damage[0]);
        Assert.Equal("entries 6 to 11 are shown from the LiteDB file, where they follow on by their hashes", reader.Damage[1]);
        var told = Assert.Single(reader.Messages);
        Assert.All(reader.Damage, d => Assert.Contains(d, told, StringComparison.Ordinal));
        Assert.Contains("stockroom repair NEW_FOLDER", told, StringComparison.Ordinal);
        Assert.Throws<BookUnavailableException>(() => BookOnDisk.Receive(reader));
    }

    [Fact]
    public void OpenToRead_ALineAlteredAndNoLiteDb_ShowsWhatStandsBefore()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        AlterLine4(disk);
        File.Delete(disk.Lite);
        using var reader = StockBookFolder.OpenDamaged(disk.Folder);
        Assert.Equal(5, reader.Ledger.Entries.Count);
        Assert.Contains("line 4", Assert.Single(reader.Damage), StringComparison.Ordinal);
    }

    [Fact]
    public void OpenToRead_WithoutAJournalOrAnIdentity_ShowsWhatLiteDbHas()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var (journal, identity) = (File.ReadAllBytes(disk.Journal), Path.Combine(disk.Folder, "book.json"));
        File.Delete(disk.Journal);
        using (var reader = StockBookFolder.OpenDamaged(disk.Folder))
        {
            Assert.Equal(11, reader.Ledger.Entries.Count);
            Assert.Contains("has no journal.txt", reader.Damage[0], StringComparison.Ordinal);
        }

        File.WriteAllBytes(disk.Journal, journal);
        File.WriteAllText(identity, "{}");
        using (var reader = StockBookFolder.OpenDamaged(disk.Folder))
        {
            Assert.Equal(11, reader.Ledger.Entries.Count);
            Assert.Contains("book.json was altered", reader.Damage[0], StringComparison.Ordinal);
        }

        File.WriteAllText(disk.Lite, "no LiteDB file either");
        Assert.Equal(BookFault.NotABook, Assert.Throws<BookUnavailableException>(() => StockBookFolder.OpenDamaged(disk.Folder)).Fault);
        Assert.Equal(BookFault.Damaged, Assert.Throws<BookUnavailableException>(() => StockBookFolder.Repair(disk.Folder, disk.Beside("new.stockbook"))).Fault);
    }

    [Fact]
    public void Open_AnEntryOfAKindOnlyANewerProgramKnows_IsRefusedAsNewerAndLeftAlone()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose(transactions: 3);
        var (previous, entry) = (File.ReadLines(disk.Journal).Last()[..64], "");
        using (var book = disk.Open(readOnly: true))
            entry = $"{{\"number\":6,\"transaction\":4,\"kind\":\"irradiated\",\"happened_at\":\"2026-05-20T14:30:00+02:00\",\"recorded_at\":\"2026-05-20T14:30:00+02:00\",\"by\":\"Ada\",\"previous\":\"{book.Ledger.HeadHash}\"}}";
        var line = $"{{\"transaction\":4,\"previous\":\"{previous}\",\"recorded_at\":\"2026-05-20T14:30:00+02:00\",\"by\":\"Ada\",\"entries\":[{entry}]}}";
        File.AppendAllText(disk.Journal, Book.Encoding.EntryCodec.HashOf(line) + " " + line + "\n");
        var before = disk.Bytes();
        Assert.Equal(BookFault.Newer, disk.Refused().Fault);
        Assert.Equal(BookFault.Newer, disk.Refused(readOnly: true).Fault);
        var refusal = Assert.Throws<BookUnavailableException>(() => StockBookFolder.OpenDamaged(disk.Folder));
        Assert.Contains("line 4 of its journal was written by a newer program ('irradiated' is not a kind of entry this version knows)", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(BookFault.Newer, Assert.Throws<BookUnavailableException>(() => StockBookFolder.Repair(disk.Folder, disk.Beside("new.stockbook"))).Fault);
        Assert.False(StockBookFolder.Verify(disk.Folder).Holds);
        Assert.Equal(before, disk.Bytes());
    }

    private static void AlterLine4(BookOnDisk disk)
    {
        var lines = File.ReadAllLines(disk.Journal);
        lines[3] = lines[3].Replace("Ada", "Eve", StringComparison.Ordinal);
        File.WriteAllText(disk.Journal, string.Concat(lines.Select(l => l + "\n")));
    }

    [Fact]
    public void OpenToRead_AnEntryAlteredInLiteDb_NamesTheEntry()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var bytes = File.ReadAllBytes(disk.Lite);
        "\"net_g\":900"u8.CopyTo(bytes.AsSpan(bytes.AsSpan().IndexOf("\"net_g\":100"u8)));
        File.WriteAllBytes(disk.Lite, bytes);
        Assert.Equal(BookFault.Damaged, disk.Refused(readOnly: true).Fault);
        using var reader = StockBookFolder.OpenDamaged(disk.Folder);
        Assert.Matches("entry [0-9]+ in the LiteDB file is not the journal's: its text does not fit its hash", Assert.Single(reader.Damage));
        Assert.Equal(11, reader.Ledger.Entries.Count);
        Assert.All(reader.Ledger.Entries.OfType<Received>(), r => Assert.Equal(100m, r.NetGrams));
    }
}
