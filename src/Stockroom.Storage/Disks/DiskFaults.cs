namespace Stockroom.Storage.Disks;

/// <summary>Failures of the disk in the keeper's words.</summary>
internal static class DiskFaults
{
    // errno ENOSPC and EDQUOT; Windows ERROR_DISK_FULL and ERROR_HANDLE_DISK_FULL. errno EROFS; Windows ERROR_WRITE_PROTECT.
    private static readonly int[] Full = [28, 122, unchecked((int)0x80070070), unchecked((int)0x80070027)];
    private static readonly int[] WriteProtected = [30, unchecked((int)0x80070013)];

    public static bool IsOfTheDisk(Exception e) => e is IOException or UnauthorizedAccessException;

    /// <summary>One line for the keeper.</summary>
    /// <param name="e">What the disk answered.</param>
    /// <param name="what">What failed, as the beginning of a sentence: "the book '...' cannot be opened".</param>
    public static BookUnavailableException Explain(Exception e, string what) => e switch
    {
        UnauthorizedAccessException => new(BookFault.ReadOnly, $"{what}: its files or folder may not be written by this user; open it read-only or give the permission", e),
        IOException io when Full.Contains(io.HResult) => new(BookFault.DiskFull, $"{what}: the disk is full; make room and try again", e),
        IOException io when WriteProtected.Contains(io.HResult) => new(BookFault.ReadOnly, $"{what}: the disk is read-only; open it read-only or copy it elsewhere", e),
        _ => new(BookFault.Disk, $"{what}: {OneLine(e.Message)}", e),
    };

    public static string OneLine(string message) => message.ReplaceLineEndings(" ");
}
