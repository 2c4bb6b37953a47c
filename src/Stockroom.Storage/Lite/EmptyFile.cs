using Stockroom.Storage.Disks;

namespace Stockroom.Storage.Lite;

/// <summary>Stands in for a log that is not there when a book is only read.</summary>
internal sealed class EmptyFile : DiskFile
{
    public override bool CanRead => true;

    public override bool CanWrite => false;

    public override long Length => 0;

    public override long Position { get; set; }

    public override int Read(byte[] buffer, int offset, int count) => 0;

    public override long Seek(long offset, SeekOrigin origin) => Position;

    public override void SetLength(long value) => throw new NotSupportedException("a book opened to read is not written");

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException("a book opened to read is not written");

    public override void Sync()
    {
        // There is nothing that could be lost.
    }
}
