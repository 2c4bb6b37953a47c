namespace Stockroom.Storage.Disks;

/// <summary>The machine's own disk.</summary>
internal sealed class LocalDisk : IDisk
{
    public static readonly LocalDisk Instance = new();

    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    public bool FileExists(string path) => File.Exists(path);

    public bool FolderExists(string path) => Directory.Exists(path);

    public IReadOnlyList<string> FilesIn(string folder) => Directory.Exists(folder) ? Directory.GetFiles(folder) : [];

    // A file that stands elsewhere behind a symbolic link has that file's length, not the link's.
    public long? LengthOf(string path) => new FileInfo(path) is { Exists: true } file
        ? file.ResolveLinkTarget(returnFinalTarget: true) is FileInfo target ? target.Length : file.Length
        : null;

    public void MakeFolder(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(path);
            return;
        }

        // The mode given is the last folder's alone; those above it that are made on the way are the owner's too.
        if (Path.GetDirectoryName(Path.GetFullPath(path)) is { Length: > 0 } parent && !Directory.Exists(parent))
            MakeFolder(parent);
        Directory.CreateDirectory(path, OwnerOnly | UnixFileMode.UserExecute);
    }

    public DiskFile Open(string path, Opening opening)
    {
        var reads = opening is Opening.Read or Opening.ReadStill;
        var options = new FileStreamOptions
        {
            Mode = reads ? FileMode.Open : FileMode.OpenOrCreate,
            Access = reads ? FileAccess.Read : FileAccess.ReadWrite,
            Share = opening switch
            {
                Opening.Read => FileShare.ReadWrite | FileShare.Delete,
                Opening.Write or Opening.ReadStill => FileShare.Read,
                _ => FileShare.None,
            },
            BufferSize = 0,
        };
        if (!reads && !OperatingSystem.IsWindows())
            options.UnixCreateMode = OwnerOnly;
        return new LocalFile(new FileStream(path, options));
    }

    public void Rename(string from, string to) => File.Move(from, to, overwrite: false);

    public void Replace(string from, string to) => File.Move(from, to, overwrite: true);

    public void RenameFolder(string from, string to) => Directory.Move(from, to);

    public void Delete(string path) => File.Delete(path);

    public void DeleteFolder(string path) => Directory.Delete(path, recursive: true);

    public void SyncFolder(string path) => FolderSync.Sync(path);

    private sealed class LocalFile(FileStream file) : DiskFile
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

        public override int Read(Span<byte> buffer) => file.Read(buffer);

        public override void Write(byte[] buffer, int offset, int count) => file.Write(buffer, offset, count);

        public override void Write(ReadOnlySpan<byte> buffer) => file.Write(buffer);

        public override long Seek(long offset, SeekOrigin origin) => file.Seek(offset, origin);

        public override void SetLength(long value) => file.SetLength(value);

        public override void Sync() => file.Flush(flushToDisk: true);

        protected override void Dispose(bool disposing)
        {
            if (disposing)
                file.Dispose();
            base.Dispose(disposing);
        }
    }
}
