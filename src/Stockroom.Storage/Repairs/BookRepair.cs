using System.Text.Json;
using Stockroom.Storage.Attachments;
using Stockroom.Storage.Disks;
using Stockroom.Storage.Lite;
using Stockroom.Storage.Locks;
using Stockroom.Storage.Snapshots;

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
    public static RepairReport Into(IDisk disk, string folder, string newFolder, TimeProvider clock)
    {
        var files = StockBookFolder.Find(disk, folder);
        var target = NewBook.Target(disk, newFolder);
        return StockBookFolder.Guarded($"the book '{folder}' was not repaired; it is as it was", () =>
        {
            using var still = BookLock.TryTakeShared(disk, files);
            if (still is null && disk.FileExists(files.Lock))
                throw new BookUnavailableException(BookFault.Locked, $"the book '{folder}' is open in {LockHolder.Of(disk, files)}; close it there to repair it");
            var identity = Identity(disk, files);
            var snapshot = new SnapshotFile(disk, files, identity).Read().Snapshot;
            var sound = SoundEntries.Of(disk, files, identity);
            var attachments = new AttachmentFiles(disk, files);
            var (unsound, _) = attachments.Check(sound.Chain.Entries);
            var saved = AttachmentFiles.NamedBy(sound.Chain.Entries).Keys.Where(attachments.IsSound).Select(h => (h, attachments.Read(h)));
            NewBook.Put(disk, target, identity, [.. sound.Lines.SelectMany(l => l)], sound.Chain.EntryHash, clock, saved);
            return new RepairReport(target, sound.Chain.Entries.Count, sound.FromLite, sound.Chain.EntryHash, [.. sound.Lost, .. Missed(disk, files, sound, snapshot), .. unsound]);
        });
    }

    // What neither journal nor LiteDB tells of itself: that there was more.
    private static IEnumerable<string> Missed(IDisk disk, BookFiles files, SoundEntries sound, Snapshot? snapshot)
    {
        if (sound.FromLite == 0 && disk.LengthOf(files.Journal) is null)
            yield return "the journal is missing, and nothing of it is in the LiteDB file";
        if (sound.Lost.Count == 0 && SnapshotFile.Contradiction(snapshot, sound.Chain) is { } contradiction)
            yield return contradiction;
    }

    private static BookIdentity Identity(IDisk disk, BookFiles files)
    {
        try
        {
            return IdentityOf(disk, files).Identity;
        }
        catch (BookUnavailableException e) when (e.Fault is BookFault.NotABook or BookFault.Damaged)
        {
            throw new BookUnavailableException(BookFault.Damaged, $"the book '{files.Folder}' cannot be repaired: neither its {Path.GetFileName(files.Identity)} nor its LiteDB file says which book it is; put back one of them", e);
        }
    }

    /// <summary>
    /// Which book it is. Where book.json is lost or is another book's, LiteDB says it, and the first line of the journal says
    /// whether that is so.
    /// </summary>
    /// <returns>The identity, and what does not hold of book.json; null if it is the book's.</returns>
    /// <exception cref="BookUnavailableException">Neither says it.</exception>
    internal static (BookIdentity Identity, string? Damage) IdentityOf(IDisk disk, BookFiles files)
    {
        var name = Path.GetFileName(files.Identity);
        try
        {
            var identity = BookIdentity.Read(disk, files);
            return disk.FileExists(files.Journal) && FirstLine(disk, files).Previous is { } previous && previous != identity.GenesisHash && FromLite(disk, files) is { } other
                ? (other, $"its {name} is another book's; which book it is was taken from the LiteDB file, with which the journal agrees")
                : (identity, null);
        }
        catch (BookUnavailableException e) when (e.Fault is BookFault.NotABook or BookFault.Damaged)
        {
            if (FromLite(disk, files) is not { } identity)
                throw;
            return (identity, $"its {name} {(disk.FileExists(files.Identity) ? "was altered" : "is missing")}; which book it is was taken from the LiteDB file");
        }
    }

    /// <summary>The identity as LiteDB has it, where the journal begins with it; null where that cannot be told.</summary>
    private static BookIdentity? FromLite(IDisk disk, BookFiles files)
    {
        try
        {
            return AsInLite(disk, files);
        }
        catch (Exception e) when (!DiskFaults.IsOfTheDisk(e) && e is not OutOfMemoryException)
        {
            return null;
        }
    }

    private static BookIdentity? AsInLite(IDisk disk, BookFiles files)
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
