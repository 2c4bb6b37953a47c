namespace Stockroom.Storage.Tests.Snapshots;

/// <summary>The snapshot is never the record, but it is a witness: it is written behind the journal.</summary>
public sealed class ContradictionTests
{
    [Fact]
    public void Book_JournalAndLiteDbOfAnEarlierDay_IsTheSnapshotsToTell()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var earlier = disk.Bytes();
        using (var book = disk.Open())
            BookOnDisk.Receive(book);
        foreach (var file in new[] { disk.Journal, disk.Lite, disk.LiteLog })
            File.WriteAllBytes(file, earlier[file]);
        var before = disk.Bytes();
        Assert.Contains("it knows 13 entries and the journal 11", disk.Refused().Message, StringComparison.Ordinal);
        Assert.Contains("it knows 13 entries and the journal 11", disk.Refused(readOnly: true).Message, StringComparison.Ordinal);
        using (var read = StockBookFolder.OpenDamaged(disk.Folder))
        {
            Assert.Contains("the snapshot does not fit the journal", Assert.Single(read.Damage), StringComparison.Ordinal);
            Assert.Equal(11, read.Ledger.Entries.Count);
        }

        var report = StockBookFolder.Repair(disk.Folder, disk.Beside("new.stockbook"));
        Assert.Contains("it knows 13 entries", Assert.Single(report.Lost), StringComparison.Ordinal);
        Assert.Equal(before, disk.Bytes());
        File.Delete(Path.Combine(disk.Folder, "snapshot.txt"));
        using var meant = disk.Open();
        Assert.Equal(11, meant.Ledger.Entries.Count);
    }

    [Fact]
    public void Book_AnotherCourseOfTheSameBook_IsRefused()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var fork = disk.Bytes();
        using (var book = disk.Open())
            BookOnDisk.Receive(book, "acetone");
        var snapshot = File.ReadAllBytes(Path.Combine(disk.Folder, "snapshot.txt"));
        disk.PutBack(fork);
        using (var book = disk.Open())
            BookOnDisk.Receive(book, "ethanol");
        File.WriteAllBytes(Path.Combine(disk.Folder, "snapshot.txt"), snapshot);
        Assert.Contains("another course of this book", disk.Refused().Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Repair_JournalAndLiteDbGone_SaysWhatIsLost()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        foreach (var file in new[] { disk.Journal, disk.Lite, disk.LiteLog })
            File.Delete(file);
        var report = StockBookFolder.Repair(disk.Folder, disk.Beside("new.stockbook"));
        Assert.Equal(0, report.Entries);
        Assert.Collection(
            report.Lost,
            l => Assert.Contains("the journal is missing", l, StringComparison.Ordinal),
            l => Assert.Contains("it knows 11 entries and the journal 0", l, StringComparison.Ordinal));
    }
}
