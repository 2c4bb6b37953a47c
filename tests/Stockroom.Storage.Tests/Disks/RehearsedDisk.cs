using Stockroom.Storage.Disks;

namespace Stockroom.Storage.Tests.Disks;

/// <summary>What is asked of a disk.</summary>
internal enum DiskCall
{
    Open = 0,
    Write,
    SetLength,
    Sync,
    Rename,
    Delete,
    SyncFolder,
}

/// <summary>
/// The machine's disk, on which each changing call can be watched, made to fail, or cut short. Nobody is kept out, so that
/// a test can look at the files at any moment.
/// </summary>
internal sealed class RehearsedDisk : IDisk
{
    /// <summary>Called before each changing call with the file's name; may throw in the disk's stead.</summary>
    public Action<DiskCall, string> Before { get; set; } = (_, _) => { };

    /// <summary>Called after each changing call.</summary>
    public Action<DiskCall, string> After { get; set; } = (_, _) => { };

    /// <summary>True to save the time a sync takes, where no power cut is rehearsed.</summary>
    public bool SkipsSyncs { get; init; }

    /// <summary>How many bytes of a write still reach the file when it fails.</summary>
    public int BytesThatGetThrough { get; set; }

    public bool FileExists(string path) => LocalDisk.Instance.FileExists(path);

    public bool FolderExists(string path) => LocalDisk.Instance.FolderExists(path);

    public IReadOnlyList<string> FilesIn(string folder) => LocalDisk.Instance.FilesIn(folder);

    public long? LengthOf(string path) => LocalDisk.Instance.LengthOf(path);

    public void MakeFolder(string path) => LocalDisk.Instance.MakeFolder(path);

    public DiskFile Open(string path, Opening opening)
    {
        var reads = opening is Opening.Read or Opening.ReadStill;
        if (reads)
            return new RehearsedFile(this, path, new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, 0));
        Before(DiskCall.Open, Path.GetFileName(path));
        return new RehearsedFile(this, path, new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.ReadWrite | FileShare.Delete, 0));
    }

    public void Rename(string from, string to) => Do(DiskCall.Rename, from, () => LocalDisk.Instance.Rename(from, to));

    public void Replace(string from, string to) => Do(DiskCall.Rename, from, () => LocalDisk.Instance.Replace(from, to));

    public void RenameFolder(string from, string to) => Do(DiskCall.Rename, from, () => LocalDisk.Instance.RenameFolder(from, to));

    public void Delete(string path) => Do(DiskCall.Delete, path, () => LocalDisk.Instance.Delete(path));

    public void DeleteFolder(string path) => Do(DiskCall.Delete, path, () => LocalDisk.Instance.DeleteFolder(path));

    public void SyncFolder(string path) => Do(DiskCall.SyncFolder, path, () => LocalDisk.Instance.SyncFolder(path));

    private void Do(DiskCall call, string path, Action act)
    {
        Before(call, Path.GetFileName(path));
        act();
        After(call, Path.GetFileName(path));
    }

    private sealed class RehearsedFile(RehearsedDisk disk, string path, FileStream file) : DiskFile
    {
        public override bool CanRead => file.CanRead;

        public override bool CanWrite => file.CanWrite;

        public override long Length => file.Length;

        public override long Position
        {
            get => file.Position;
            set => file.Position = value;
        }

        public override int Read(byte[] buffer, int offset, int count) => file.Read(buffer, offset, count);

        public override void Write(byte[] buffer, int offset, int count)
        {
            try
            {
                disk.Before(DiskCall.Write, Path.GetFileName(path));
            }
            catch (IOException)
            {
                file.Write(buffer, offset, Math.Min(count, disk.BytesThatGetThrough));
                throw;
            }

            file.Write(buffer, offset, count);
            disk.After(DiskCall.Write, Path.GetFileName(path));
        }

        public override long Seek(long offset, SeekOrigin origin) => file.Seek(offset, origin);

        public override void SetLength(long value) => disk.Do(DiskCall.SetLength, path, () => file.SetLength(value));

        public override void Sync() => disk.Do(DiskCall.Sync, path, () =>
        {
            if (!disk.SkipsSyncs)
                file.Flush(true);
        });

        protected override void Dispose(bool disposing)
        {
            if (disposing)
                file.Dispose();
            base.Dispose(disposing);
        }
    }
}
