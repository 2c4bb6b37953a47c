using Stockroom.Storage.Backups;
using Stockroom.Storage.Repairs;
using Stockroom.Storage.Tests.Disks;

namespace Stockroom.Storage.Tests.Repairs;

/// <summary>A new book that could not be finished leaves nothing behind: a full disk is not kept full, and the next attempt finds its way free.</summary>
public sealed class NewBookTests
{
    private const int DiskFullOnUnix = 28;

    [Theory]
    [InlineData("journal.txt")]
    [InlineData("book.json.new")]
    public void RepairOrRestore_DiskFull_LeavesNothingAndSucceedsWhenThereIsRoom(string at)
    {
        using var folder = new BookOnDisk();
        folder.MakeAndClose();
        BookBackup.Make(folder.Folder, folder.Beside("a.stockbackup"));
        var full = new RehearsedDisk { Before = (call, file) => _ = call == DiskCall.Write && file == at ? throw new IOException("rehearsed", DiskFullOnUnix) : 0 };
        Assert.Equal(BookFault.DiskFull, Assert.Throws<BookUnavailableException>(() => BookRepair.Into(full, folder.Folder, folder.Beside("new"), TimeProvider.System)).Fault);
        Assert.Equal(BookFault.DiskFull, Assert.Throws<BookUnavailableException>(() => BookBackup.Restore(full, folder.Beside("a.stockbackup"), folder.Beside("back"), null, TimeProvider.System)).Fault);
        Assert.Equal(["a.stockbackup", "harbour.stockbook"], Directory.EnumerateFileSystemEntries(folder.Beside("")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal(11, StockBookFolder.Repair(folder.Folder, folder.Beside("new")).Entries);
        Assert.Equal(11, BookBackup.Restore(folder.Beside("a.stockbackup"), folder.Beside("back")).Entries);
    }

    [Fact]
    public void Create_DiskFull_LeavesNoFolder()
    {
        using var folder = new BookOnDisk();
        var full = new RehearsedDisk { Before = (call, file) => _ = call == DiskCall.Write && file == "book.json.new" ? throw new IOException("rehearsed", DiskFullOnUnix) : 0 };
        Assert.Equal(BookFault.DiskFull, Assert.Throws<BookUnavailableException>(() => folder.Make(full)).Fault);
        Assert.False(Path.Exists(folder.Folder));
    }

    [Fact]
    public void Attach_DiskFull_LeavesNoHalfFile()
    {
        using var folder = new BookOnDisk();
        var disk = new RehearsedDisk { BytesThatGetThrough = 20 };
        using var book = folder.Make(disk);
        var draft = new Book.Entries.Attached { HappenedAt = BookOnDisk.Now, Container = BookOnDisk.Receive(book), Name = "a.txt", Sha256 = "", Bytes = 0, MediaType = "" };
        disk.Before = (call, file) => _ = call == DiskCall.Write && file.EndsWith(".unfinished", StringComparison.Ordinal) ? throw new IOException("rehearsed", DiskFullOnUnix) : 0;
        Assert.Equal(BookFault.DiskFull, Assert.Throws<BookUnavailableException>(() => book.Attach("Ada", draft, new byte[100])).Fault);
        Assert.Empty(Directory.EnumerateFiles(Path.Combine(folder.Folder, "attachments")));
        disk.Before = (_, _) => { };
        book.Attach("Ada", draft, new byte[100]);
        Assert.True(book.Verify().Holds);
    }
}
