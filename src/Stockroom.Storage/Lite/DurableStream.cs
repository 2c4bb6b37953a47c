using Stockroom.Storage.Disks;

namespace Stockroom.Storage.Lite;

/// <summary>
/// A stream for LiteDB, which by itself never syncs. What is written is put in order on the medium: everything before the
/// page that confirms a transaction, the log before the data file is touched, the data file before the log is emptied.
/// LiteDB may dispose it as it likes; the file is closed by its owner alone.
/// </summary>
internal sealed class DurableStream(DiskFile file, StoreFault fault) : Stream
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

    /// <summary>Returns when everything written is on the medium, or the fault is noted.</summary>
    public void SyncIfDirty()
    {
        if (_isDirty)
            Change(file.Sync, isDirtyAfter: false);
    }

    public override void Flush() => SyncIfDirty();

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        try
        {
            return file.Read(buffer);
        }
        catch (Exception e) when (DiskFaults.IsOfTheDisk(e))
        {
            fault.Happened(e);
            throw new StoreReadException(e);
        }
    }

    public override long Seek(long offset, SeekOrigin origin) => file.Seek(offset, origin);

    public override void SetLength(long value)
    {
        After?.SyncIfDirty();
        Change(() => file.SetLength(value), isDirtyAfter: true);
    }

    public override void Write(byte[] buffer, int offset, int count)
    {
        After?.SyncIfDirty();
        if (count == PageSize && buffer[offset + ConfirmedAt] != 0)
            SyncIfDirty();
        Change(() => file.Write(buffer, offset, count), isDirtyAfter: true);
    }

    /// <summary>Closes the file.</summary>
    public void CloseFile() => file.Dispose();

    // A write that fails is not reported to LiteDB: it and all that follow are dropped, and the store's owner is told.
    private void Change(Action change, bool isDirtyAfter)
    {
        if (fault.HasHappened)
            return;
        try
        {
            change();
            _isDirty = isDirtyAfter;
        }
        catch (Exception e) when (DiskFaults.IsOfTheDisk(e))
        {
            fault.Happened(e);
        }
    }
}
