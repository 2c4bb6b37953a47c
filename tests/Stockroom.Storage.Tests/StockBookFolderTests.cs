using Stockroom.Book;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Storage.Tests.Disks;

namespace Stockroom.Storage.Tests;

public sealed class StockBookFolderTests
{
    [Fact]
    public void Open_AfterClosing_GivesTheSameLedgerAndSaysNothing()
    {
        using var disk = new BookOnDisk();
        string head;
        using (var book = disk.Make())
        {
            BookOnDisk.Receive(book);
            head = book.Ledger.HeadHash;
        }

        using var again = disk.Open();
        Assert.Equal(head, again.Ledger.HeadHash);
        Assert.Equal(3, again.Ledger.Entries.Count);
        Assert.Single(again.Ledger.State.Containers);
        Assert.Empty(again.Messages);
        Assert.True(again.Verify().Holds);
    }

    [Fact]
    public void Open_WithoutClosingFirst_LosesNothingAcknowledged()
    {
        using var disk = new BookOnDisk();
        using var book = disk.Make(new RehearsedDisk());
        BookOnDisk.Receive(book);
        var (bytes, head) = (disk.Bytes(), book.Ledger.HeadHash);
        book.Dispose();
        disk.PutBack(bytes);

        using var again = disk.Open();
        Assert.Equal(head, again.Ledger.HeadHash);
        Assert.Empty(again.Messages);
        Assert.True(again.Verify().Holds);
    }

    [Fact]
    public void Open_NothingThere_IsMissing()
    {
        using var disk = new BookOnDisk();
        Assert.Equal(BookFault.Missing, disk.Refused().Fault);
    }

    [Fact]
    public void Open_AFolderOfOtherThings_IsRefusedAndLeavesThemByteForByte()
    {
        using var disk = new BookOnDisk();
        Directory.CreateDirectory(disk.Folder);
        File.WriteAllText(disk.Lite, "not LiteDB's");
        File.WriteAllText(disk.Journal, "Dear diary");
        var before = Directory.GetFiles(disk.Folder);
        var bytes = disk.Bytes();
        Assert.Equal(BookFault.NotABook, disk.Refused().Fault);
        Assert.Equal(before, Directory.GetFiles(disk.Folder));
        Assert.Equal(bytes, disk.Bytes());
    }

    [Fact]
    public void Open_AFile_IsNotABook()
    {
        using var disk = new BookOnDisk();
        File.WriteAllText(disk.Folder, "a letter");
        Assert.Equal(BookFault.NotABook, disk.Refused().Fault);
        Assert.Equal("a letter", File.ReadAllText(disk.Folder));
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("[1]")]
    [InlineData("no JSON")]
    [InlineData("{\"kind\":\"stock book\",\"format\":1,\"book\":\"short\",\"created\":\"2026-05-20T12:00:00Z\"}")]
    public void Open_WithAnIdentityThatIsNotOnes_IsNotABookAndUntouched(string identity)
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        File.WriteAllText(Path.Combine(disk.Folder, "book.json"), identity);
        var before = disk.Bytes();
        Assert.Equal(BookFault.NotABook, disk.Refused().Fault);
        Assert.Equal(before, disk.Bytes());
    }

    [Fact]
    public void Open_OfANewerFormat_IsRefusedAndSaysSo()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var path = Path.Combine(disk.Folder, "book.json");
        File.WriteAllText(path, File.ReadAllText(path).Replace("\"format\":1", "\"format\":2", StringComparison.Ordinal));
        var refusal = disk.Refused();
        Assert.Equal(BookFault.Newer, refusal.Fault);
        Assert.Contains("format 2", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Create_WhereABookIs_IsRefusedAndChangesNothing()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var before = disk.Bytes();
        var refusal = Assert.Throws<BookUnavailableException>(() => StockBookFolder.Create(disk.Folder));
        Assert.Equal(BookFault.AlreadyThere, refusal.Fault);
        Assert.Equal(before, disk.Bytes());
    }

    [Fact]
    public void Create_InAFolderWithSomethingInIt_IsRefused()
    {
        using var disk = new BookOnDisk();
        Directory.CreateDirectory(disk.Folder);
        File.WriteAllText(Path.Combine(disk.Folder, "photo.jpg"), "x");
        Assert.Equal(BookFault.AlreadyThere, Assert.Throws<BookUnavailableException>(() => StockBookFolder.Create(disk.Folder)).Fault);
        Assert.Single(Directory.GetFileSystemEntries(disk.Folder));
    }

    [Fact]
    public void Create_OnUnix_GivesEveryFileToItsOwnerOnly()
    {
        if (OperatingSystem.IsWindows())
            return;
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        const UnixFileMode ToOthers = UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.GroupExecute
            | UnixFileMode.OtherRead | UnixFileMode.OtherWrite | UnixFileMode.OtherExecute;
        var all = Directory.GetFiles(disk.Folder).Append(disk.Folder).ToList();
        Assert.Contains(disk.Journal, all);
        foreach (var path in all)
            Assert.Equal(UnixFileMode.None, File.GetUnixFileMode(path) & ToOthers);
    }

    [Fact]
    public void Open_Twice_TheSecondIsRefusedAndNamesTheHolder()
    {
        using var disk = new BookOnDisk();
        using var book = disk.Make();
        var refusal = disk.Refused();
        Assert.Equal(BookFault.Locked, refusal.Fault);
        Assert.Contains($"process {Environment.ProcessId} on {Environment.MachineName} since 2026-05-20 14:30:00", refusal.Message, StringComparison.Ordinal);
        BookOnDisk.Receive(book);
        Assert.True(book.Verify().Holds);
    }

    [Fact]
    public void Open_WithALockFileNobodyHolds_IsNotRefused()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        Assert.True(File.Exists(Path.Combine(disk.Folder, "lock")));
        File.WriteAllText(Path.Combine(disk.Folder, "lock-holder.json"), "{\"host\":\"elsewhere\",\"process\":1,\"since\":\"2020-01-01T00:00:00Z\"}");
        using var book = disk.Open();
        BookOnDisk.Receive(book);
    }

    [Fact]
    public void Open_ToReadWhileAnotherWrites_SeesWhatIsAcknowledgedAndWritesNothing()
    {
        using var disk = new BookOnDisk();
        using var book = disk.Make();
        BookOnDisk.Receive(book);
        using var reader = disk.Open(readOnly: true);
        Assert.Equal(book.Ledger.HeadHash, reader.Ledger.HeadHash);
        Assert.Contains("was not compared", Assert.Single(reader.Messages), StringComparison.Ordinal);
        var refusal = Assert.Throws<BookUnavailableException>(() => BookOnDisk.Receive(reader));
        Assert.Equal(BookFault.ReadOnly, refusal.Fault);
    }

    [Fact]
    public void Open_ToRead_ChangesNoByte()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var before = disk.Bytes();
        using (var reader = disk.Open(readOnly: true))
        {
            Assert.Empty(reader.Messages);
            Assert.True(reader.Verify().Holds);
        }

        Assert.Equal(before, disk.Bytes());
    }

    [Fact]
    public void Append_WhatCannotBe_ChangesNoByte()
    {
        using var disk = new BookOnDisk();
        using var book = disk.Make();
        var id = BookOnDisk.Receive(book);
        var before = File.ReadAllBytes(disk.Journal);
        Assert.Throws<BookRefusal>(() => book.Append(new Transaction("Ada", new Weighed { HappenedAt = BookOnDisk.Now, Container = id, GrossGrams = -1 })));
        Assert.Equal(before, File.ReadAllBytes(disk.Journal));
    }

    [Fact]
    public void Append_AfterClosing_IsRefused()
    {
        using var disk = new BookOnDisk();
        var book = disk.Make();
        book.Dispose();
        Assert.Throws<BookUnavailableException>(() => BookOnDisk.Receive(book));
    }

    [Fact]
    public async Task Append_FromSeveralThreads_BooksEveryTransactionOnce()
    {
        using var disk = new BookOnDisk();
        using (var book = disk.Make())
        {
            var id = BookOnDisk.Receive(book);
            await Task.WhenAll(Enumerable.Range(1, 4).Select(n => Task.Run(() =>
            {
                for (var i = 0; i < 25; i++)
                    book.Append(new Transaction($"keeper {n}", new Weighed { HappenedAt = BookOnDisk.Now, Container = id, GrossGrams = (n * 100) + i }));
            })));
            Assert.Equal(101, book.Ledger.State.ContainerCalled(id).Weighings.Count);
        }

        using var again = disk.Open();
        Assert.Empty(again.Messages);
        Assert.Equal(103, again.Ledger.Entries.Count);
        Assert.Equal(100, again.Ledger.Entries.OfType<Weighed>().Select(w => (w.By, w.GrossGrams)).Skip(1).Distinct().Count());
    }
}
