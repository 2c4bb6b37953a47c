using Stockroom.Storage.Attachments;
using Stockroom.Storage.Disks;

namespace Stockroom.Storage.Repairs;

/// <summary>Puts a whole book into a folder that is not there yet: written under another name, checked, synced, renamed.</summary>
internal static class NewBook
{
    private const string Unfinished = ".unfinished";

    /// <summary>The folder's full path, which must be free.</summary>
    /// <exception cref="BookUnavailableException">Something is there.</exception>
    public static string Target(IDisk disk, string folder)
    {
        var target = FullPath.Of(folder);
        if (disk.FolderExists(target) || disk.FileExists(target))
            throw new BookUnavailableException(BookFault.AlreadyThere, $"'{folder}' is already there; name a folder that is not");
        if (disk.FolderExists(target + Unfinished))
            throw new BookUnavailableException(BookFault.AlreadyThere, $"'{target + Unfinished}' was left behind by an attempt that was stopped; take it away first");
        return target;
    }

    /// <summary>Writes and checks it, with the attachments that are given; what was begun and failed is taken away again.</summary>
    /// <exception cref="BookUnavailableException">What was written does not hold; it is not put in place.</exception>
    public static void Put(IDisk disk, string target, BookIdentity identity, ReadOnlySpan<byte> journalText, string head, TimeProvider clock, IEnumerable<(string Hash, byte[] Content)> attachments)
    {
        var files = new BookFiles(target + Unfinished);
        try
        {
            Write(disk, files, identity, journalText, head, clock, attachments);
            disk.RenameFolder(files.Folder, target);
        }
        catch
        {
            // A full disk would stay full of it, and the next attempt would find it in its way.
            DiskFaults.Try(() => disk.DeleteFolder(files.Folder));
            throw;
        }

        if (Path.GetDirectoryName(target) is { Length: > 0 } parent)
            disk.SyncFolder(parent);
    }

    private static void Write(IDisk disk, BookFiles files, BookIdentity identity, ReadOnlySpan<byte> journalText, string head, TimeProvider clock, IEnumerable<(string Hash, byte[] Content)> attachments)
    {
        disk.MakeFolder(files.Folder);
        using (var journal = disk.Open(files.Journal, Opening.Write))
        {
            journal.Write(journalText);
            journal.Sync();
        }

        var kept = new AttachmentFiles(disk, files);
        foreach (var (hash, content) in attachments)
            kept.Put(hash, content);
        identity.Write(disk, files);
        StockBookFolder.Open(disk, files.Folder, readOnly: false, clock).Dispose();
        var report = BookVerification.OfFolder(disk, files.Folder);
        if (!report.RecordHolds || report.HeadHash != head)
            throw new BookUnavailableException(BookFault.Damaged, $"the new book in '{files.Folder}' does not hold and is not put in place: {report.Findings.FirstOrDefault() ?? "its head is another"}");
    }
}
