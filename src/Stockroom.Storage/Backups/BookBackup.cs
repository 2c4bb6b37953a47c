using Stockroom.Storage.Attachments;
using Stockroom.Storage.Disks;
using Stockroom.Storage.Journals;
using Stockroom.Storage.Repairs;

namespace Stockroom.Storage.Backups;

/// <summary>Backs a book up into one file and restores it from there.</summary>
public static class BookBackup
{
    private const string Unfinished = ".unfinished";

    /// <summary>
    /// Checks the whole book, writes it into a file that is not there yet, reads the file back and replays it; only then
    /// does the file get its name.
    /// </summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="file">The backup to be made.</param>
    /// <param name="passphrase">Encrypts it; null leaves it a plain ZIP archive.</param>
    /// <param name="clock">Gives the time of making.</param>
    /// <exception cref="BookUnavailableException">The book does not hold or is in use, or the file cannot be written; no file is left.</exception>
    public static BackupManifest Make(string folder, string file, string? passphrase = null, TimeProvider? clock = null) =>
        Make(LocalDisk.Instance, folder, file, passphrase, clock ?? TimeProvider.System);

    /// <summary>Reads a backup and replays it, writing nothing: what would be restored.</summary>
    /// <exception cref="BookUnavailableException">It does not hold, or the passphrase is missing or another.</exception>
    public static BackupManifest Check(string file, string? passphrase = null) => Read(LocalDisk.Instance, file, passphrase).Manifest;

    /// <summary>Restores a backup into a folder that is not there yet, and checks the book there.</summary>
    /// <exception cref="BookUnavailableException">The backup does not hold, the passphrase is missing or another, or the folder is already there.</exception>
    public static BackupManifest Restore(string file, string folder, string? passphrase = null, TimeProvider? clock = null) =>
        Restore(LocalDisk.Instance, file, folder, passphrase, clock ?? TimeProvider.System);

    internal static BackupManifest Make(IDisk disk, string folder, string file, string? passphrase, TimeProvider clock)
    {
        var target = FullPath.Of(file);
        if (disk.FileExists(target) || disk.FolderExists(target))
            throw new BookUnavailableException(BookFault.AlreadyThere, $"'{file}' is already there; a backup overwrites nothing, name another file");
        var report = BookVerification.OfFolder(disk, folder);
        if (!report.RecordHolds)
            throw new BookUnavailableException(BookFault.Damaged, $"nothing was backed up: {report.Findings.Except(report.OfAttachments).First()}; see 'stockroom verify'");
        return StockBookFolder.Guarded($"nothing was backed up to '{file}'", () =>
        {
            var files = new BookFiles(FullPath.Of(folder));
            var attachments = new AttachmentFiles(disk, files);
            var archive = Of(disk, files, attachments, passphrase is not null, clock);
            var packed = archive.Pack(attachments);
            Write(disk, target, passphrase is null ? packed : BackupCipher.Encrypt(packed, passphrase), passphrase);
            return archive.Manifest;
        });
    }

    internal static BackupManifest Restore(IDisk disk, string file, string folder, string? passphrase, TimeProvider clock)
    {
        var archive = Read(disk, file, passphrase);
        var target = NewBook.Target(disk, folder);
        return StockBookFolder.Guarded($"'{file}' was not restored", () =>
        {
            NewBook.Put(disk, target, archive.Identity, archive.Journal, archive.Manifest.HeadHash, clock, archive.Attachments.Select(h => (h, archive.Attachment(h))));
            return archive.Manifest;
        });
    }

    private static BackupArchive Of(IDisk disk, BookFiles files, AttachmentFiles attachments, bool isEncrypted, TimeProvider clock)
    {
        var identity = BookIdentity.Read(disk, files);
        using var journal = disk.Open(files.Journal, Opening.Read);
        var bytes = journal.ReadAll();
        using var stream = new MemoryStream(bytes, writable: false);
        var reading = JournalReading.Of(stream, identity.GenesisHash);
        var good = bytes[..(int)reading.GoodLength];
        return BackupArchive.Of(identity, reading.LacksLineEnd ? [.. good, (byte)'\n'] : good, reading.Chain, attachments, clock.GetLocalNow(), isEncrypted);
    }

    private static void Write(IDisk disk, string target, byte[] content, string? passphrase)
    {
        var unfinished = target + Unfinished;
        disk.Delete(unfinished);
        try
        {
            using (var file = disk.Open(unfinished, Opening.WriteAlone))
            {
                file.Write(content);
                file.Sync();
            }

            Read(disk, unfinished, passphrase);
            disk.Rename(unfinished, target);
            disk.SyncFolder(Path.GetDirectoryName(target)!);
        }
        catch (Exception e) when (DiskFaults.IsOfTheDisk(e) || e is BookUnavailableException)
        {
            TakeAway(disk, unfinished);
            throw;
        }
    }

    private static void TakeAway(IDisk disk, string file)
    {
        try
        {
            disk.Delete(file);
        }
        catch (Exception e) when (DiskFaults.IsOfTheDisk(e))
        {
            // The first failure is the one to tell.
        }
    }

    private static BackupArchive Read(IDisk disk, string path, string? passphrase)
    {
        try
        {
            using var file = disk.Open(FullPath.Of(path), Opening.Read);
            var content = file.ReadAll();
            var isEncrypted = BackupCipher.IsEncrypted(content);
            if (isEncrypted && passphrase is null)
                throw new BookUnavailableException(BookFault.Passphrase, $"the backup '{path}' is encrypted; its passphrase is needed");
            return BackupArchive.Unpack(isEncrypted ? BackupCipher.Decrypt(content, passphrase!) : content, isEncrypted);
        }
        catch (Exception e) when (DiskFaults.IsOfTheDisk(e))
        {
            throw DiskFaults.Explain(e, $"the backup '{path}' cannot be read");
        }
        catch (FormatException e)
        {
            throw new BookUnavailableException(BookFault.Damaged, $"the backup '{path}' does not hold: {DiskFaults.OneLine(e.Message)}", e);
        }
    }
}
