using System.Text;
using Stockroom.Storage.Disks;

namespace Stockroom.Storage.Lite;

/// <summary>
/// Looks at a file before LiteDB may open it: LiteDB writes into a file that is not its own, and takes an empty one for
/// an empty book.
/// </summary>
internal static class LiteHeader
{
    private const int PageSize = 8192;
    private const int InfoAt = 32;
    private const int VersionAt = 59;
    private const byte Version = 8;

    private static readonly byte[] Info = Encoding.ASCII.GetBytes("** This is a LiteDB file **");

    public static bool IsLiteDb(DiskFile file)
    {
        var begin = new byte[VersionAt + 1];
        file.Position = 0;
        var read = file.ReadAtLeast(begin, begin.Length, throwOnEndOfStream: false);
        file.Position = 0;
        return read == begin.Length && begin.AsSpan(InfoAt, Info.Length).SequenceEqual(Info) && begin[VersionAt] == Version;
    }

    /// <summary>False where a write was cut short in the middle of a page.</summary>
    public static bool HasWholePages(DiskFile file) => file.Length % PageSize == 0;
}
