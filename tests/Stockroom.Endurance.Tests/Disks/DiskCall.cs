namespace Stockroom.Endurance.Tests.Disks;

/// <summary>What is asked of a disk.</summary>
internal enum DiskCall
{
    OpenToRead = 0,
    OpenToWrite,
    Read,
    Write,
    SetLength,
    Sync,
    Rename,
    Delete,
    MakeFolder,
    SyncFolder,
}
