namespace Stockroom.Storage.Disks;

/// <summary>Full names of files and folders that the keeper named.</summary>
internal static class FullPath
{
    /// <summary>The full name, without a separator at its end.</summary>
    /// <exception cref="BookUnavailableException">It is blank, or cannot be a name.</exception>
    public static string Of(string path) => string.IsNullOrWhiteSpace(path) || path.Contains('\0', StringComparison.Ordinal)
        ? throw new BookUnavailableException(BookFault.Missing, $"'{path.Replace('\0', '?')}' names no file or folder")
        : Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));
}
