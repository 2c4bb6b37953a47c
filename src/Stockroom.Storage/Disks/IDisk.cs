namespace Stockroom.Storage.Disks;

/// <summary>How a file is opened.</summary>
internal enum Opening
{
    /// <summary>To read; others may read and write.</summary>
    Read = 0,

    /// <summary>To read; nobody may write meanwhile.</summary>
    ReadStill,

    /// <summary>To read and write, made if missing; others may read.</summary>
    Write,

    /// <summary>To read and write, made if missing; nobody else.</summary>
    WriteAlone,
}

/// <summary>All of the disk that storage touches, so that its failures can be rehearsed.</summary>
internal interface IDisk
{
    bool FileExists(string path);

    bool FolderExists(string path);

    /// <summary>Full names of the files directly in a folder; none if there is no such folder.</summary>
    IReadOnlyList<string> FilesIn(string folder);

    /// <summary>Length of the file that has that name now, whatever was opened under it before; null if there is none.</summary>
    long? LengthOf(string path);

    /// <summary>Makes a folder that only its owner can enter.</summary>
    void MakeFolder(string path);

    /// <summary>Opens a file; a new one can be read and written by its owner only.</summary>
    DiskFile Open(string path, Opening opening);

    /// <summary>Renames a file to a name that is free.</summary>
    void Rename(string from, string to);

    /// <summary>Renames a file over another, at one stroke.</summary>
    void Replace(string from, string to);

    /// <summary>Renames a folder to a name that is free.</summary>
    void RenameFolder(string from, string to);

    void Delete(string path);

    /// <summary>Takes a folder away with all that is in it.</summary>
    void DeleteFolder(string path);

    /// <summary>Makes names given or taken away in a folder durable.</summary>
    void SyncFolder(string path);
}
