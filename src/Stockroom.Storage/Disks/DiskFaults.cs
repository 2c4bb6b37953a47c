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
        UnauthorizedAccessException => new(BookFault.ReadOnly, $"{what}: {OneLine(e.Message).TrimEnd('.')}; this user has no permission for it, or it is of another kind than belongs there", e),
        IOException io when Full.Contains(io.HResult) => new(BookFault.DiskFull, $"{what}: the disk is full; make room and try again", e),
        IOException io when WriteProtected.Contains(io.HResult) => new(BookFault.ReadOnly, $"{what}: the disk is read-only; open it read-only or copy it elsewhere", e),
        _ => new(BookFault.Disk, $"{what}: {OneLine(e.Message)}", e),
    };

    /// <summary>Does what should follow a failure, of which the first is the one to tell.</summary>
    public static void Try(Action act)
    {
        try
        {
            act();
        }
        catch (Exception e) when (IsOfTheDisk(e))
        {
            // The first failure is the one to tell.
        }
    }

    public static string OneLine(string message) => message.ReplaceLineEndings(" ");
}
