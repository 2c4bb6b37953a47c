using Stockroom.Storage.Disks;
using Stockroom.Storage.Locks;
using Stockroom.Storage.Repairs;

namespace Stockroom.Storage.Exports;

/// <summary>What an import of a whole book did.</summary>
public enum ImportEnd
{
    /// <summary>The book was made.</summary>
    Made = 0,

    /// <summary>The folder holds this very book, up to the same entry; nothing was done.</summary>
    AlreadyThere,
}

/// <summary>Makes a book equal to the one that was exported: the same identity, the same lines of journal, the same hashes.</summary>
public static class BookImport
{
    /// <summary>Largest document that is read: 300 MB.</summary>
    public const long MostBytes = 300_000_000;

    private const string Aside = ".empty";

    /// <summary>Reads and checks a document, writing nothing.</summary>
    /// <exception cref="DocumentException">Anything in it is wrong; all that was found is named with its line.</exception>
    public static ExportedBook Read(byte[] document) => ExportReader.Read(DocumentText.Of(document, MostBytes));

    /// <summary>Makes the book in a folder that is not there, is empty, or holds a book without any entry.</summary>
    /// <exception cref="BookUnavailableException">The folder holds another book with entries, or something else; nothing was changed.</exception>
    public static ImportEnd Into(string folder, ExportedBook book, TimeProvider? clock = null) => Into(LocalDisk.Instance, folder, book, clock ?? TimeProvider.System);

    /// <summary>Whether the document could be put into a folder.</summary>
    /// <exception cref="BookUnavailableException">It could not.</exception>
    public static ImportEnd Check(string folder, ExportedBook book) => Look(LocalDisk.Instance, FullPath.Of(folder), book).End;

    internal static ImportEnd Into(IDisk disk, string folder, ExportedBook book, TimeProvider clock)
    {
        var target = FullPath.Of(folder);
        var (end, givesWay) = Look(disk, target, book);
        if (end == ImportEnd.AlreadyThere)
            return end;
        return StockBookFolder.Guarded($"nothing was imported into '{folder}'", () =>
        {
            if (givesWay)
                disk.RenameFolder(target, target + Aside);
            try
            {
                NewBook.Put(disk, NewBook.Target(disk, folder), book.Identity, book.Journal(), book.Ledger.HeadHash, clock, book.Attachments.Select(a => (a.Key, a.Value)));
            }
            catch when (givesWay && !disk.FolderExists(target))
            {
                disk.RenameFolder(target + Aside, target);
                throw;
            }

            if (givesWay && Directory.Exists(target + Aside))
                Directory.Delete(target + Aside, recursive: true);
            return ImportEnd.Made;
        });
    }

    // It will be taken away, so it may hold nothing of the keeper's and nobody may have it open.
    private static bool GivesWay(IDisk disk, string folder)
    {
        var files = new BookFiles(folder);
        if (Directory.EnumerateFileSystemEntries(folder).FirstOrDefault(f => f == files.Settings || !files.Own.Contains(f)) is { } more)
            throw new BookUnavailableException(BookFault.AlreadyThere, $"'{folder}' is a book without entries that holds '{Path.GetFileName(more)}' as well, which would be lost; move it out, or name a folder that is not there yet");
        using var still = BookLock.TryTakeShared(disk, files);
        return still is not null || !disk.FileExists(files.Lock)
            ? true
            : throw new BookUnavailableException(BookFault.Locked, $"the book '{folder}' is open in {LockHolder.Of(disk, files)}; close it there first");
    }

    // A folder that is there gives way only if it is empty, or a book nobody ever booked in.
    private static (ImportEnd End, bool GivesWay) Look(IDisk disk, string folder, ExportedBook book)
    {
        if (!disk.FolderExists(folder) && !disk.FileExists(folder))
            return (ImportEnd.Made, false);
        if (Directory.Exists(folder) && !Directory.EnumerateFileSystemEntries(folder).Any())
            return (ImportEnd.Made, true);
        using var there = StockBookFolder.Open(disk, folder, readOnly: true, TimeProvider.System);
        if (there.Ledger.HeadHash == book.Ledger.HeadHash)
            return (ImportEnd.AlreadyThere, false);
        if (there.Ledger.Entries.IsEmpty)
            return (ImportEnd.Made, GivesWay(disk, folder));
        throw new BookUnavailableException(BookFault.AlreadyThere, there.Identity.Book == book.Identity.Book
            ? $"'{folder}' is the same book with {there.Ledger.Entries.Count} entries where the file has {book.Ledger.Entries.Count}; a JSON file makes a whole book and is never added to one: name a folder that is not there yet"
            : $"'{folder}' is another book, with {there.Ledger.Entries.Count} entries of its own; a JSON file makes a whole book and is never mixed into another: name a folder that is not there yet");
    }
}
