namespace Stockroom.Endurance.Tests.Disks;

/// <summary>
/// One file's content as the program sees it and as the medium holds it. Until it is synced, each block and the length
/// exist in several versions, any of which may be what a power cut leaves behind.
/// </summary>
internal sealed class Inode(int blockSize)
{
    private readonly Dictionary<int, List<byte[]>> _blocks = [];
    private readonly HashSet<int> _cutOff = [];
    private readonly List<int> _lengths = [];
    private byte[] _now = [];
    private byte[] _durable = [];

    public int Length { get; private set; }

    public static Inode Of(byte[] content, int blockSize) => new(blockSize) { _now = [.. content], _durable = [.. content], Length = content.Length };

    public byte[] Content() => _now[..Length];

    public int Read(long at, Span<byte> into)
    {
        var count = (int)Math.Clamp(Length - at, 0, into.Length);
        _now.AsSpan((int)Math.Min(at, Length), count).CopyTo(into);
        return count;
    }

    public void Write(long at, ReadOnlySpan<byte> bytes)
    {
        var end = (int)at + bytes.Length;
        if (end > Length)
            Resize(end);
        bytes.CopyTo(_now.AsSpan((int)at));
        for (var block = (int)at / blockSize; block * blockSize < end; block++)
            Touch(block);
    }

    public void SetLength(long length)
    {
        var before = Length;
        Resize((int)length);
        if (length < before && length % blockSize != 0)
            Touch((int)length / blockSize);
    }

    public void Sync()
    {
        if (_durable.Length != Length)
            Array.Resize(ref _durable, Length);
        foreach (var block in _blocks.Keys.Union(_cutOff).Where(b => b * blockSize < Length))
            Block(_now, block).CopyTo(_durable.AsSpan(block * blockSize));
        _blocks.Clear();
        _cutOff.Clear();
        _lengths.Clear();
    }

    /// <summary>One of the contents a power cut now could leave: each unsynced block is the old one half the time.</summary>
    public Inode Survivor(Random random)
    {
        var length = _lengths.Count == 0 || random.Next(2) == 0 ? _durable.Length : _lengths[random.Next(_lengths.Count)];
        var content = new byte[length];
        _durable.AsSpan(0, Math.Min(length, _durable.Length)).CopyTo(content);
        foreach (var (block, versions) in _blocks.OrderBy(b => b.Key))
        {
            if (block * blockSize >= length || random.Next(2) == 0)
                continue;
            var version = versions[random.Next(versions.Count)];
            version.AsSpan(0, Math.Min(version.Length, length - (block * blockSize))).CopyTo(content.AsSpan(block * blockSize));
        }

        return Of(content, blockSize);
    }

    private void Resize(int length)
    {
        if (length > _now.Length)
            Array.Resize(ref _now, Math.Max(length, _now.Length * 2));
        if (length < Length)
            _now.AsSpan(length, Length - length).Clear();
        for (var block = length / blockSize; block * blockSize < Length; block++)
            _cutOff.Add(block);
        Length = length;
        _lengths.Add(length);
    }

    private void Touch(int block)
    {
        if (!_blocks.TryGetValue(block, out var versions))
            _blocks[block] = versions = [];
        versions.Add(Block(_now, block).ToArray());
    }

    private Span<byte> Block(byte[] content, int block)
    {
        var start = block * blockSize;
        return content.AsSpan(start, Math.Max(0, Math.Min(blockSize, Length - start)));
    }
}
