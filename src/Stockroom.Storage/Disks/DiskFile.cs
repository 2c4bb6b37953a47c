namespace Stockroom.Storage.Disks;

/// <summary>An open file that can be made durable.</summary>
internal abstract class DiskFile : Stream
{
    public override bool CanSeek => true;

    /// <summary>Returns when everything written is on the medium.</summary>
    public abstract void Sync();

    public override void Flush()
    {
        // Nothing is held back; durability is asked for by name.
    }

    /// <summary>Reads the whole file from its beginning.</summary>
    public byte[] ReadAll()
    {
        Position = 0;
        using var bytes = new MemoryStream();
        CopyTo(bytes);
        return bytes.ToArray();
    }
}
