using Stockroom.Storage.Disks;

namespace Stockroom.Endurance.Tests.Disks;

/// <summary>An open file of a <see cref="MemoryDisk"/>.</summary>
internal sealed class MemoryFile(MemoryDisk disk, string path, Inode inode, bool writes) : DiskFile
{
    public override bool CanRead => true;

    public override bool CanWrite => writes;

    public override long Length => inode.Length;

    public override long Position { get; set; }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        disk.Before(DiskCall.Read, path);
        var read = inode.Read(Position, buffer);
        Position += read;
        return read;
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        OnlyIfOpenToWrite();
        try
        {
            disk.Before(DiskCall.Write, path);
        }
        catch (IOException)
        {
            inode.Write(Position, buffer[..Math.Min(disk.BytesThatGetThrough, buffer.Length)]);
            throw;
        }

        inode.Write(Position, buffer);
        Position += buffer.Length;
        disk.After(DiskCall.Write, path);
    }

    public override long Seek(long offset, SeekOrigin origin) => Position = origin switch
    {
        SeekOrigin.Begin => offset,
        SeekOrigin.Current => Position + offset,
        _ => Length + offset,
    };

    public override void SetLength(long value)
    {
        OnlyIfOpenToWrite();
        disk.Before(DiskCall.SetLength, path);
        inode.SetLength(value);
        disk.After(DiskCall.SetLength, path);
    }

    public override void Sync()
    {
        disk.Before(DiskCall.Sync, path);
        inode.Sync();
        disk.After(DiskCall.Sync, path);
    }

    private void OnlyIfOpenToWrite()
    {
        if (!writes)
            throw new NotSupportedException("the file is open to read");
    }
}
