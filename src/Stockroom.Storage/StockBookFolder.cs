using System.Security.Cryptography;
using Stockroom.Storage.Disks;
using Stockroom.Storage.Journals;
using Stockroom.Storage.Lite;
using Stockroom.Storage.Locks;
using Stockroom.Storage.Readings;
using Stockroom.Storage.Repairs;
using Stockroom.Storage.Snapshots;

namespace Stockroom.Storage;

/// <summary>Makes and opens books. A book is a folder, copied and moved as one.</summary>
public static class StockBookFolder
{
    /// <summary>True if a folder is a stock book, whether or not it can be opened.</summary>
    public static bool IsBook(string folder) => File.Exists(new BookFiles(folder).Identity);

    /// <summary>Makes an empty book in a folder that does not exist or is empty, and opens it to write.</summary>
    /// <exception cref="BookUnavailableException">Something is there already, or the disk refuses.</exception>
    public static StockBook Create(string folder, TimeProvider? clock = null) => Create(LocalDisk.Instance, folder, clock ?? TimeProvider.System);

    /// <summary>Opens a book: its journal is checked whole, LiteDB compared with it and brought up to date.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="readOnly">Changes nothing and keeps nobody out; several may read while one writes.</param>
    /// <param name="clock">Gives the time of booking and its offset.</param>
    /// <exception cref="BookUnavailableException">It cannot be opened; nothing was changed.</exception>
    public static StockBook Open(string folder, bool readOnly = false, TimeProvider? clock = null) => Open(LocalDisk.Instance, folder, readOnly, clock ?? TimeProvider.System);

    /// <summary>
    /// Opens a book to read even if it is damaged: as far as it holds, with what does not hold in its <see cref="StockBook.Damage"/>
    /// and first among its messages.
    /// </summary>
    /// <exception cref="BookUnavailableException">There is no book, or nothing of it can be read.</exception>
    public static StockBook OpenDamaged(string folder) => OpenDamaged(LocalDisk.Instance, folder);

    /// <summary>Checks everything that is kept and says what does not hold, also of a book that cannot be opened.</summary>
    /// <exception cref="BookUnavailableException">There is no book, or another program is writing it.</exception>
    public static VerificationReport Verify(string folder) => BookVerification.OfFolder(LocalDisk.Instance, folder);

    /// <summary>
    /// Makes a new book from every entry of a damaged one that the chain vouches for, checks it, and puts it in place. The
    /// damaged book stays as it is.
    /// </summary>
    /// <exception cref="BookUnavailableException">There is no book, it is in use, it is of a newer format, or the new folder is already there.</exception>
    public static RepairReport Repair(string folder, string newFolder, TimeProvider? clock = null) => BookRepair.Into(LocalDisk.Instance, folder, newFolder, clock ?? TimeProvider.System);

    /// <summary>True if a path is one of the files a book keeps itself in, which nothing else may be written over.</summary>
    public static bool IsOwnFile(string folder, string path) => new BookFiles(FullPath.Of(folder)).Own.Contains(FullPath.Of(path), StringComparer.Ordinal);

    internal static StockBook Create(IDisk disk, string folder, TimeProvider clock)
    {
        var files = new BookFiles(FullPath.Of(folder));
        if (disk.FileExists(files.Folder))
            throw new BookUnavailableException(BookFault.AlreadyThere, $"'{folder}' is a file; a book needs a folder of its own");
        if (disk.FolderExists(files.Folder) && Directory.EnumerateFileSystemEntries(files.Folder).Any())
        {
            throw new BookUnavailableException(BookFault.AlreadyThere, disk.FileExists(files.Identity)
                ? $"there is already a book in '{folder}'; open it, or name another folder"
                : $"the folder '{folder}' is not empty; a book needs a folder of its own");
        }

        return Guarded($"the book '{folder}' cannot be made", () => Make(disk, files, clock));
    }

    internal static StockBook Open(IDisk disk, string folder, bool readOnly, TimeProvider clock)
    {
        var files = Find(disk, folder);
        return Guarded($"the book '{folder}' cannot be opened", () =>
        {
            if (!readOnly)
                return OpenToWrite(disk, files, BookIdentity.Read(disk, files), clock);
            var book = new BookReading(disk, files).Open();
            return book.Damage.Count == 0 ? book : throw BookUnavailableException.DoesNotHold(files.Folder, book.Damage[0]);
        });
    }

    internal static StockBook OpenDamaged(IDisk disk, string folder)
    {
        var files = Find(disk, folder);
        return Guarded($"the book '{folder}' cannot be opened", () => new BookReading(disk, files).OpenDamaged());
    }

    internal static BookFiles Find(IDisk disk, string folder)
    {
        var files = new BookFiles(FullPath.Of(folder));
        if (disk.FileExists(files.Folder))
            throw new BookUnavailableException(BookFault.NotABook, $"'{folder}' is a file, not a stock book's folder; it was left as it is");
        if (!disk.FolderExists(files.Folder))
            throw new BookUnavailableException(BookFault.Missing, $"there is no stock book at '{folder}'");
        if (!disk.FileExists(files.Identity) && !HasEntries(disk, files))
            throw new BookUnavailableException(BookFault.NotABook, $"the folder '{folder}' is not a stock book: it has no {Path.GetFileName(files.Identity)}; it was left as it is");
        return files;
    }

    // A folder with a journal is a book that lost its identity. One that this user may not look into is no answer either way.
    private static bool HasEntries(IDisk disk, BookFiles files)
    {
        _ = Guarded($"the folder '{files.Folder}' cannot be looked into", () => disk.FilesIn(files.Folder));
        if (!disk.FileExists(files.Journal))
            return false;
        using var journal = Guarded($"the folder '{files.Folder}' cannot be looked into", () => disk.Open(files.Journal, Opening.Read));
        var begin = new byte[JournalLine.HashLength + 2];
        return Guarded($"the folder '{files.Folder}' cannot be looked into", () => journal.ReadAtLeast(begin, begin.Length, throwOnEndOfStream: false)) == begin.Length
            && begin[..JournalLine.HashLength].All(b => char.IsAsciiHexDigitLower((char)b)) && begin.AsSpan(JournalLine.HashLength).SequenceEqual(" {"u8);
    }

    internal static T Guarded<T>(string failure, Func<T> act)
    {
        try
        {
            return act();
        }
        catch (Exception e) when (DiskFaults.IsOfTheDisk(e))
        {
            throw DiskFaults.Explain(e, failure);
        }
    }

    private static StockBook Make(IDisk disk, BookFiles files, TimeProvider clock)
    {
        var identity = new BookIdentity(BookIdentity.CurrentFormat, Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16)), clock.GetLocalNow());
        var wasThere = disk.FolderExists(files.Folder);
        disk.MakeFolder(files.Folder);
        try
        {
            using var opening = new Unwinding();
            opening.Hold(BookLock.TakeAlone(disk, files, clock));
            var journal = opening.Hold(disk.Open(files.Journal, Opening.Write));
            journal.Sync();
            var lite = opening.Hold(LiteStore.Make(disk, files.Lite, files.LiteLog, identity));
            identity.Write(disk, files);
            if (Path.GetDirectoryName(files.Folder) is { Length: > 0 } parent)
                disk.SyncFolder(parent);
            return opening.Done(new StockBook(disk, files, identity, new JournalFile(journal, 0), lite, new JournalChain(identity.GenesisHash), [], clock, opening.Held));
        }
        catch (Exception e) when (DiskFaults.IsOfTheDisk(e))
        {
            TakeAway(disk, files);
            if (!wasThere)
                DiskFaults.Try(() => disk.DeleteFolder(files.Folder));
            throw;
        }
    }

    // What was begun in an empty folder is taken away again as far as the disk allows, the identity first.
    private static void TakeAway(IDisk disk, BookFiles files)
    {
        foreach (var file in new[] { files.Identity, files.Identity + ".new", files.Journal, files.Lite, files.LiteLog, files.Snapshot, files.Snapshot + ".new", files.Holder, files.Lock })
        {
            try
            {
                disk.Delete(file);
            }
            catch (Exception e) when (DiskFaults.IsOfTheDisk(e))
            {
                return;
            }
        }
    }

    private static StockBook OpenToWrite(IDisk disk, BookFiles files, BookIdentity identity, TimeProvider clock)
    {
        using var opening = new Unwinding();
        opening.Hold(BookLock.TakeAlone(disk, files, clock));
        var file = opening.Hold(OpenJournal(disk, files, Opening.Write));
        var reading = Read(file, files, identity);
        if (new SnapshotFile(disk, files, identity).Contradiction(reading.Chain) is { } contradiction)
            throw BookUnavailableException.DoesNotHold(files.Folder, new LiteFiles(disk, files, identity, []).CompareOnly(reading.Chain).FirstOrDefault() ?? contradiction);
        var messages = new List<string>();
        var lite = opening.Hold(new LiteFiles(disk, files, identity, messages).OpenAndFollow(reading.Chain));
        var journal = new JournalFile(file, reading.GoodLength);
        if (reading.LacksLineEnd)
            journal.Append([(byte)'\n']);
        if (reading.TornBytes > 0)
        {
            journal.CutTail();
            messages.Add($"the journal's last line was cut short ({reading.TornBytes} bytes, never acknowledged) and was taken off");
        }

        return opening.Done(new StockBook(disk, files, identity, journal, lite, reading.Chain, messages, clock, opening.Held));
    }

    private static DiskFile OpenJournal(IDisk disk, BookFiles files, Opening opening)
    {
        if (!disk.FileExists(files.Journal))
            throw BookUnavailableException.DoesNotHold(files.Folder, $"it has no {Path.GetFileName(files.Journal)}; put back the journal that belongs to it");
        return disk.Open(files.Journal, opening);
    }

    private static JournalReading Read(DiskFile file, BookFiles files, BookIdentity identity)
    {
        var reading = JournalReading.Of(file, identity.GenesisHash);
        reading.RefuseIfNewer(files);
        return reading.Broken is { } broken
            ? throw BookUnavailableException.DoesNotHold(files.Folder, broken.Among(reading.Chain.Entries.Count))
            : reading;
    }
}
