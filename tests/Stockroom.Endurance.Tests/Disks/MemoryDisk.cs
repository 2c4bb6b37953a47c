using Stockroom.Storage.Disks;

namespace Stockroom.Endurance.Tests.Disks;

/// <summary>
/// A disk in memory whose power can be cut: content is safe once its file is synced, names once their folder is. Of names
/// not yet safe the first few survive, in order, as on a file system that journals its folders. Nobody is kept out.
/// </summary>
internal sealed class MemoryDisk(int blockSize = MemoryDisk.UsualBlock) : IDisk
{
    public const int UsualBlock = 4096;

    private readonly List<Action<SortedDictionary<string, Inode>>> _pending = [];
    private SortedDictionary<string, Inode> _names = new(StringComparer.Ordinal);
    private SortedDictionary<string, Inode> _durable = new(StringComparer.Ordinal);

    /// <summary>Called before each call; may throw in the disk's stead.</summary>
    public Action<DiskCall, string> Before { get; set; } = (_, _) => { };

    /// <summary>Called after each call that changed something.</summary>
    public Action<DiskCall, string> After { get; set; } = (_, _) => { };

    /// <summary>How many bytes of a write still reach the file when it fails.</summary>
    public int BytesThatGetThrough { get; set; }

    public bool FileExists(string path) => _names.ContainsKey(path);

    public bool FolderExists(string path) => _names.Keys.Any(n => IsUnder(n, path));

    public IReadOnlyList<string> FilesIn(string folder) => [.. _names.Keys.Where(n => Path.GetDirectoryName(n) == folder)];

    public long? LengthOf(string path) => _names.TryGetValue(path, out var inode) ? inode.Length : null;

    public void MakeFolder(string path) => Before(DiskCall.MakeFolder, path);

    public DiskFile Open(string path, Opening opening)
    {
        var writes = opening is Opening.Write or Opening.WriteAlone;
        Before(writes ? DiskCall.OpenToWrite : DiskCall.OpenToRead, path);
        if (!_names.TryGetValue(path, out var inode))
        {
            if (!writes)
                throw new FileNotFoundException($"'{path}' is not there");
            inode = new Inode(blockSize);
            var made = inode;
            Name(n => n[path] = made);
            After(DiskCall.OpenToWrite, path);
        }

        return new MemoryFile(this, path, inode, writes);
    }

    public void Rename(string from, string to)
    {
        Before(DiskCall.Rename, from);
        if (_names.ContainsKey(to))
            throw new IOException($"'{to}' is already there");
        Name(n =>
        {
            if (n.Remove(from, out var inode))
                n[to] = inode;
        });
        After(DiskCall.Rename, from);
    }

    public void Replace(string from, string to)
    {
        Before(DiskCall.Rename, from);
        Name(n =>
        {
            if (n.Remove(from, out var inode))
                n[to] = inode;
        });
        After(DiskCall.Rename, from);
    }

    public void RenameFolder(string from, string to)
    {
        Before(DiskCall.Rename, from);
        Name(n =>
        {
            foreach (var name in n.Keys.Where(k => IsUnder(k, from)).ToList())
            {
                n.Remove(name, out var inode);
                n[to + name[from.Length..]] = inode!;
            }
        });
        After(DiskCall.Rename, from);
    }

    public void Delete(string path)
    {
        Before(DiskCall.Delete, path);
        Name(n => n.Remove(path));
        After(DiskCall.Delete, path);
    }

    public void DeleteFolder(string path)
    {
        Before(DiskCall.Delete, path);
        Name(n =>
        {
            foreach (var name in n.Keys.Where(k => IsUnder(k, path)).ToList())
                n.Remove(name);
        });
        After(DiskCall.Delete, path);
    }

    public void SyncFolder(string path)
    {
        Before(DiskCall.SyncFolder, path);
        _durable = new SortedDictionary<string, Inode>(_names, StringComparer.Ordinal);
        _pending.Clear();
        After(DiskCall.SyncFolder, path);
    }

    /// <summary>A disk as it could be found after the power is cut now.</summary>
    public MemoryDisk AfterPowerCut(Random random)
    {
        var names = new SortedDictionary<string, Inode>(_durable, StringComparer.Ordinal);
        foreach (var change in _pending.Take(random.Next(_pending.Count + 1)))
            change(names);
        return Holding(names.Select(n => (n.Key, n.Value.Survivor(random))));
    }

    /// <summary>A disk with the same files, all of them safe.</summary>
    public MemoryDisk Copy() => Holding(_names.Select(n => (n.Key, Inode.Of(n.Value.Content(), blockSize))));

    public byte[] this[string path]
    {
        get => _names[path].Content();
        set => _durable[path] = _names[path] = Inode.Of(value, blockSize);
    }

    private static bool IsUnder(string name, string folder) => name.StartsWith(folder + Path.DirectorySeparatorChar, StringComparison.Ordinal);

    private MemoryDisk Holding(IEnumerable<(string Name, Inode Content)> files)
    {
        var disk = new MemoryDisk(blockSize);
        foreach (var (name, content) in files)
            disk._names[name] = disk._durable[name] = content;
        return disk;
    }

    private void Name(Action<SortedDictionary<string, Inode>> change)
    {
        change(_names);
        _pending.Add(change);
    }
}
