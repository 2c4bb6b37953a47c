namespace Stockroom.Storage.Disks;

/// <summary>A file that gets its name only when it is whole.</summary>
internal static class Unfinished
{
    /// <summary>Writes a content under a name of its own and syncs it; where that fails, nothing of it stays to fill the disk.</summary>
    public static void Write(IDisk disk, string unfinished, ReadOnlySpan<byte> content)
    {
        disk.Delete(unfinished);
        try
        {
            using var file = disk.Open(unfinished, Opening.WriteAlone);
            file.Write(content);
            file.Sync();
        }
        catch (Exception e) when (DiskFaults.IsOfTheDisk(e))
        {
            DiskFaults.Try(() => disk.Delete(unfinished));
            throw;
        }
    }
}
