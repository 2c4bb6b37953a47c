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
        if (file.Length < PageSize || file.Length % PageSize != 0)
            return false;
        var page = new byte[PageSize];
        file.Position = 0;
        file.ReadExactly(page);
        file.Position = 0;
        return page.AsSpan(InfoAt, Info.Length).SequenceEqual(Info) && page[VersionAt] == Version;
    }
}
