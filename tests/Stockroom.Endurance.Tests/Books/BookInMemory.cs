using Stockroom.Endurance.Tests.Disks;
using Stockroom.Storage;

namespace Stockroom.Endurance.Tests.Books;

/// <summary>A book on a disk in memory.</summary>
internal static class BookInMemory
{
    public static readonly string Folder = Path.GetFullPath(Path.Combine(Path.GetTempPath(), "stockroom-on-no-disk", "harbour.stockbook"));

    public static readonly string Identity = Path.Combine(Folder, "book.json");
    public static readonly string Journal = Path.Combine(Folder, "journal.txt");
    public static readonly string Lite = Path.Combine(Folder, "book.litedb");
    public static readonly string LiteLog = Path.Combine(Folder, "book.litedb-log");

    public static readonly string Snapshot = Path.Combine(Folder, "snapshot.txt");

    public static IReadOnlyList<string> Files { get; } = [Identity, Journal, Lite, LiteLog, Snapshot];

    public static StockBook Make(MemoryDisk disk) => StockBookFolder.Create(disk, Folder, new StillClock());

    public static StockBook Open(MemoryDisk disk, bool readOnly = false) => StockBookFolder.Open(disk, Folder, readOnly, new StillClock());

    public static VerificationReport Verify(MemoryDisk disk) => BookVerification.OfFolder(disk, Folder);

    /// <summary>Books some receipts, weigh-ins and so on.</summary>
    public static void Fill(StockBook book, Random random, int transactions)
    {
        Steps.Begin(book);
        for (var i = 1; i < transactions; i++)
            Steps.Next(book, random);
    }

    /// <summary>A disk with a book that was closed in order, or one whose program was killed and left LiteDB's log and an older snapshot behind.</summary>
    public static (MemoryDisk Disk, string Head) Filled(Random random, int transactions, bool killed)
    {
        var disk = new MemoryDisk();
        using (var begun = Make(disk))
            Fill(begun, random, transactions - 3);
        using var book = Open(disk);
        for (var i = 0; i < 3; i++)
            Steps.Next(book, random);
        var head = book.Ledger.HeadHash;
        if (killed)
            return (disk.Copy(), head);
        book.Dispose();
        return (disk, head);
    }
}
