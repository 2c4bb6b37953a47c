namespace Stockroom.Storage.Tests;

/// <summary>A book whose book.json is gone or another's: named, and shown and repaired from what the others agree on.</summary>
public sealed class IdentityTests
{
    [Theory]
    [InlineData(false, "book.json is missing")]
    [InlineData(true, "book.json is another book's")]
    public void Identity_GoneOrAnothers_IsToldAndTakenFromLiteDbWithWhichTheJournalAgrees(bool another, string words)
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var identity = Path.Combine(disk.Folder, "book.json");
        var head = StockBookFolder.Verify(disk.Folder).HeadHash;
        File.Delete(identity);
        if (another)
        {
            StockBookFolder.Create(disk.Beside("other.stockbook")).Dispose();
            File.Copy(Path.Combine(disk.Beside("other.stockbook"), "book.json"), identity);
        }

        var before = disk.Bytes();
        Assert.Equal(BookFault.Damaged, disk.Refused().Fault);
        using (var read = StockBookFolder.OpenDamaged(disk.Folder))
        {
            Assert.Contains(words, Assert.Single(read.Damage), StringComparison.Ordinal);
            Assert.Equal(head, read.Ledger.HeadHash);
        }

        Assert.Equal(before, disk.Bytes());
        Assert.Equal(head, StockBookFolder.Repair(disk.Folder, disk.Beside("new.stockbook")).HeadHash);
    }

    [Fact]
    public void Folder_OfAnotherUser_IsNotSaidToBeNoBook()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows() || Environment.IsPrivilegedProcess, "who may look into everything is kept out of nothing");
        if (OperatingSystem.IsWindows())
            return;
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        File.SetUnixFileMode(disk.Folder, UnixFileMode.None);
        try
        {
            var refusal = disk.Refused(readOnly: true);
            Assert.Equal(BookFault.ReadOnly, refusal.Fault);
            Assert.Contains("no permission", refusal.Message, StringComparison.Ordinal);
        }
        finally
        {
            File.SetUnixFileMode(disk.Folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    [Fact]
    public void Journal_BehindASymbolicLink_IsWrittenThroughIt()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links want a privilege there");
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        File.Move(disk.Journal, disk.Beside("elsewhere.txt"));
        File.CreateSymbolicLink(disk.Journal, disk.Beside("elsewhere.txt"));
        using var book = disk.Open();
        BookOnDisk.Receive(book);
        Assert.True(book.Verify().Holds);
    }
}
