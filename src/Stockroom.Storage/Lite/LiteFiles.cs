using Stockroom.Storage.Disks;
using Stockroom.Storage.Journals;

namespace Stockroom.Storage.Lite;

/// <summary>Opens a book's LiteDB file beside a journal that holds, builds it anew where there is none, brings it up to date.</summary>
internal sealed class LiteFiles(IDisk disk, BookFiles files, BookIdentity identity, List<string> messages)
{
    private const string NewSuffix = ".new";

    /// <summary>A store equal to the journal.</summary>
    /// <exception cref="BookUnavailableException">LiteDB leads the journal or contradicts it; nothing was changed.</exception>
    public LiteStore OpenAndFollow(JournalChain chain)
    {
        if (HasContent(files.Lite) && HasContent(files.LiteLog) && !FitsUnwritten(chain))
            return SetAsideAndRebuild(chain);
        var store = OpenAsFound(readOnly: false);
        if (store is null)
            return HasContent(files.Lite) ? SetAsideAndRebuild(chain) : Rebuild(chain);
        try
        {
            if (Compare(store, chain) is { } comparison && Replay(store, chain, comparison.Held))
                return store;
        }
        catch
        {
            store.Dispose();
            throw;
        }

        store.Dispose();
        return SetAsideAndRebuild(chain);
    }

    /// <summary>Compares without changing anything; says where LiteDB leads the journal or contradicts it.</summary>
    public IReadOnlyList<string> CompareOnly(JournalChain chain)
    {
        try
        {
            return CompareAsFound(chain);
        }
        catch (BookUnavailableException e)
        {
            return [e.Message];
        }
    }

    private IReadOnlyList<string> CompareAsFound(JournalChain chain)
    {
        using var store = OpenAsFound(readOnly: true);
        if (store is null || Readable(() => LiteComparison.Of(store, chain, identity)) is not { } comparison)
            messages.Add("the LiteDB file is missing or unreadable; it is built anew from the journal when the book is next opened to write");
        else if (comparison.Findings.Count > 0)
            return comparison.Findings;
        else if (comparison.Held < chain.Entries.Count)
            messages.Add($"the LiteDB file lacks the last {chain.Entries.Count - comparison.Held} entries; they are replayed from the journal when the book is next opened to write");
        return [];
    }

    /// <summary>The store as it lies there; null if it is missing, empty, unreadable or no LiteDB file at all.</summary>
    public LiteStore? OpenAsFound(bool readOnly)
    {
        if (!disk.FileExists(files.Lite))
            return null;
        using (var file = disk.Open(files.Lite, Opening.Read))
        {
            if (file.Length == 0)
                return null;
            if (!LiteHeader.IsLiteDb(file) || !LiteHeader.HasWholePages(file))
                return null;
        }

        return Readable(() => LiteStore.Open(disk, files, readOnly));
    }

    private bool HasContent(string path)
    {
        if (!disk.FileExists(path))
            return false;
        using var file = disk.Open(path, Opening.Read);
        return file.Length > 0;
    }

    // A log left behind by a kill is put into the data file on opening to write: so it is read first, lest it be another's.
    private bool FitsUnwritten(JournalChain chain)
    {
        using var store = OpenAsFound(readOnly: true);
        return store is not null && Compare(store, chain) is not null;
    }

    private LiteComparison? Compare(LiteStore store, JournalChain chain)
    {
        if (Readable(() => LiteComparison.Of(store, chain, identity)) is not { } comparison)
            return null;
        if (comparison.Findings.Count > 0)
            throw BookUnavailableException.DoesNotHold(files.Folder, comparison.Findings[0]);
        return comparison;
    }

    // False if LiteDB's file reads well and yet cannot be written.
    private bool Replay(LiteStore store, JournalChain chain, long held)
    {
        if (held == chain.Entries.Count)
            return true;
        if (Readable(() => Inserted(store, chain, (int)held)) is null)
            return false;
        messages.Add($"{chain.Entries.Count - held} entries of the journal were missing in the LiteDB file and were replayed");
        return true;
    }

    private static LiteStore Inserted(LiteStore store, JournalChain chain, int held)
    {
        store.Insert(Numbered(chain, held));
        return store;
    }

    private LiteStore SetAsideAndRebuild(JournalChain chain)
    {
        for (var n = 1; ; n++)
        {
            var aside = $"{files.Lite}.unreadable-{n}";
            if (disk.FileExists(aside))
                continue;
            disk.Rename(files.Lite, aside);
            if (disk.FileExists(files.LiteLog))
                disk.Rename(files.LiteLog, aside + "-log");
            messages.Add($"the LiteDB file could not be read; it is kept as {Path.GetFileName(aside)}");
            return Rebuild(chain);
        }
    }

    private LiteStore Rebuild(JournalChain chain)
    {
        var (data, log) = (files.Lite + NewSuffix, files.LiteLog + NewSuffix);
        disk.Delete(data);
        disk.Delete(log);
        using (var store = LiteStore.Make(disk, data, log, identity))
            store.Insert(Numbered(chain, 0));
        disk.Delete(files.Lite);
        disk.Delete(files.LiteLog);
        disk.Rename(log, files.LiteLog);
        disk.Rename(data, files.Lite);
        disk.SyncFolder(files.Folder);
        messages.Add($"the LiteDB file was missing or unreadable and was built anew from the journal ({chain.Entries.Count} entries)");
        return LiteStore.Open(disk, files, readOnly: false);
    }

    private static IEnumerable<(Stockroom.Book.Entries.Entry, string, string)> Numbered(JournalChain chain, int from)
    {
        for (var i = from; i < chain.Entries.Count; i++)
            yield return (chain.Entries[i], chain.EntryTexts[i], chain.EntryHashes[i]);
    }

    // LiteDB answers a damaged page with whatever exception comes its way; a failing disk is another matter.
    private static T? Readable<T>(Func<T> read)
        where T : class
    {
        try
        {
            return read();
        }
        catch (Exception e) when (!DiskFaults.IsOfTheDisk(e) && e is not OutOfMemoryException and not BookUnavailableException)
        {
            return null;
        }
    }
}
