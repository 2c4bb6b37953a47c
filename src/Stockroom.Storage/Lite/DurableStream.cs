using Stockroom.Storage.Disks;

namespace Stockroom.Storage.Lite;

/// <summary>
/// A stream for LiteDB, which by itself never syncs. What is written is put in order on the medium: everything before the
/// page that confirms a transaction, the log before the data file is touched, the data file before the log is emptied.
/// </summary>
internal sealed class DurableStream(DiskFile file) : Stream
{
    private const int PageSize = 8192;

    // Offset in a page's header of the byte that says "this page ends a transaction" (LiteDB 5 page layout).
    private const int ConfirmedAt = 18;

    private bool _isDirty;

    /// <summary>The stream that must be on the medium before this one is written or cut.</summary>
    public DurableStream? After { get; set; }

    public override bool CanRead => true;

    public override bool CanSeek => true;

    public override bool CanWrite => file.CanWrite;

    public override long Length => file.Length;

    public override long Position
    {
        get => file.Position;
        set => file.Position = value;
    }

    /// <summary>Returns when everything written is on the medium.</summary>
    public void SyncIfDirty()
    {
        if (!_isDirty)
            return;
        file.Sync();
        _isDirty = false;
    }

    public override void Flush() => SyncIfDirty();

    public override int Read(byte[] buffer, int offset, int count) => file.Read(buffer, offset, count);

    public override int Read(Span<byte> buffer) => file.Read(buffer);

    public override long Seek(long offset, SeekOrigin origin) => file.Seek(offset, origin);

    public override void SetLength(long value)
    {
        After?.SyncIfDirty();
        file.SetLength(value);
        _isDirty = true;
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        After?.SyncIfDirty();
        if (buffer.Length == PageSize && buffer[ConfirmedAt] != 0)
            SyncIfDirty();
        file.Write(buffer);
        _isDirty = true;
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing)
            file.Dispose();
        base.Dispose(disposing);
    }
}
