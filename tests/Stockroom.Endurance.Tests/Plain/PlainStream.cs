using Stockroom.Storage.Disks;

namespace Stockroom.Endurance.Tests.Plain;

/// <summary>A file handed to LiteDB as it is, synced whenever LiteDB flushes it; where LiteDB does not, neither does this.</summary>
internal sealed class PlainStream(DiskFile file) : Stream
{
    public override bool CanRead => true;

    public override bool CanSeek => true;

    public override bool CanWrite => file.CanWrite;

    public override long Length => file.Length;

    public override long Position
    {
        get => file.Position;
        set => file.Position = value;
    }

    public override void Flush() => file.Sync();

    public override int Read(byte[] buffer, int offset, int count) => file.Read(buffer, offset, count);

    public override long Seek(long offset, SeekOrigin origin) => file.Seek(offset, origin);

    public override void SetLength(long value) => file.SetLength(value);

    public override void Write(byte[] buffer, int offset, int count) => file.Write(buffer, offset, count);
}
