using System.Text.Json;
using Stockroom.Storage.Disks;
using Stockroom.Storage.Lite;
using Stockroom.Storage.Locks;

namespace Stockroom.Storage.Repairs;

/// <summary>What a repair saved and what it could not.</summary>
/// <param name="Folder">The new book.</param>
/// <param name="Entries">Entries in it.</param>
/// <param name="FromLite">Those among them that the journal had lost and LiteDB still had.</param>
/// <param name="HeadHash">Hash of the last entry saved.</param>
/// <param name="Lost">What could not be saved, a line each; it is still in the old book.</param>
public sealed record RepairReport(string Folder, long Entries, long FromLite, string HeadHash, IReadOnlyList<string> Lost);

/// <summary>Makes a new book from what is sound in a damaged one, which stays as it is.</summary>
internal static class BookRepair
{
    private const string Unfinished = ".unfinished";

    public static RepairReport Into(IDisk disk, string folder, string newFolder, TimeProvider clock)
    {
        var files = StockBookFolder.Find(disk, folder);
        var target = Path.TrimEndingDirectorySeparator(Path.GetFullPath(newFolder));
        if (disk.FolderExists(target) || disk.FileExists(target))
            throw new BookUnavailableException(BookFault.AlreadyThere, $"'{newFolder}' is already there; a repair makes a folder of its own");
        return StockBookFolder.Guarded($"the book '{folder}' was not repaired; it is as it was", () =>
        {
            using var still = BookLock.TryTakeShared(disk, files);
            if (still is null && disk.FileExists(files.Lock))
                throw new BookUnavailableException(BookFault.Locked, $"the book '{folder}' is open in {LockHolder.Of(disk, files)}; close it there to repair it");
            var identity = Identity(disk, files);
            var sound = SoundEntries.Of(disk, files, identity);
            Write(disk, new BookFiles(target + Unfinished), identity, sound, clock);
            disk.RenameFolder(target + Unfinished, target);
            if (Path.GetDirectoryName(target) is { Length: > 0 } parent)
                disk.SyncFolder(parent);
            return new RepairReport(target, sound.Chain.Entries.Count, sound.FromLite, sound.Chain.EntryHash, sound.Lost);
        });
    }

    private static void Write(IDisk disk, BookFiles files, BookIdentity identity, SoundEntries sound, TimeProvider clock)
    {
        if (disk.FolderExists(files.Folder))
            throw new BookUnavailableException(BookFault.AlreadyThere, $"'{files.Folder}' was left behind by an earlier repair; take it away first");
        disk.MakeFolder(files.Folder);
        using (var journal = disk.Open(files.Journal, Opening.Write))
        {
            foreach (var line in sound.Lines)
                journal.Write(line);
            journal.Sync();
        }

        identity.Write(disk, files);
        StockBookFolder.Open(disk, files.Folder, readOnly: false, clock).Dispose();
        var report = BookVerification.OfFolder(disk, files.Folder);
        if (!report.Holds || report.HeadHash != sound.Chain.EntryHash)
            throw new BookUnavailableException(BookFault.Damaged, $"the repaired book in '{files.Folder}' does not hold and is not put in place: {report.Findings.FirstOrDefault() ?? "its head is another"}");
    }

    // Where book.json is lost, LiteDB says which book it is, and the first line of the journal says whether that is so.
    private static BookIdentity Identity(IDisk disk, BookFiles files)
    {
        try
        {
            return BookIdentity.Read(disk, files);
        }
        catch (BookUnavailableException e) when (e.Fault is BookFault.NotABook or BookFault.Damaged)
        {
            return FromLite(disk, files) ?? throw new BookUnavailableException(BookFault.Damaged, $"the book '{files.Folder}' cannot be repaired: neither its {Path.GetFileName(files.Identity)} nor its LiteDB file says which book it is; put back one of them", e);
        }
    }

    private static BookIdentity? FromLite(IDisk disk, BookFiles files)
    {
        var unknown = new BookIdentity(BookIdentity.CurrentFormat, "", default);
        using var store = new LiteFiles(disk, files, unknown, []).OpenAsFound(readOnly: true);
        if (store?.ReadBook() is not { Length: 32 } book)
            return null;
        var (previous, made) = FirstLine(disk, files);
        var identity = unknown with { Book = book, Created = made };
        return previous == identity.GenesisHash ? identity : null;
    }

    // What the first line follows, and when it was booked: the day of making is not known any better.
    private static (string? Previous, DateTimeOffset Made) FirstLine(IDisk disk, BookFiles files)
    {
        try
        {
            using var file = disk.Open(files.Journal, Opening.Read);
            using var reader = new StreamReader(file);
            using var line = JsonDocument.Parse(reader.ReadLine()?[(Journals.JournalLine.HashLength + 1)..] ?? "");
            return (line.RootElement.GetProperty("previous").GetString(), line.RootElement.GetProperty("recorded_at").GetDateTimeOffset());
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or FormatException or ArgumentOutOfRangeException)
        {
            return (null, default);
        }
    }
}
