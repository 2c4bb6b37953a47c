using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Book.Places;
using Stockroom.Storage.Disks;

namespace Stockroom.Storage.Tests;

/// <summary>A book in a folder of its own, taken away afterwards.</summary>
internal sealed class BookOnDisk : IDisposable
{
    public static readonly DateTimeOffset Now = new(2026, 5, 20, 14, 30, 0, TimeSpan.FromHours(2));

    private readonly string _root = Directory.CreateTempSubdirectory("stockroom-").FullName;

    public string Folder => Path.Combine(_root, "harbour.stockbook");

    public string Journal => Path.Combine(Folder, "journal.txt");

    public string Lite => Path.Combine(Folder, "book.litedb");

    public string LiteLog => Path.Combine(Folder, "book.litedb-log");

    public string Beside(string name) => Path.Combine(_root, name);

    public StockBook Open(bool readOnly = false) => StockBookFolder.Open(Folder, readOnly, new StillClock());

    public StockBook OpenOn(IDisk disk) => StockBookFolder.Open(disk, Folder, readOnly: false, new StillClock());

    /// <summary>Makes the book with a room in it, and leaves it open.</summary>
    public StockBook Make(IDisk? disk = null)
    {
        var book = disk is null ? StockBookFolder.Create(Folder, new StillClock()) : StockBookFolder.Create(disk, Folder, new StillClock());
        book.Append(new Transaction("Ada", new PlaceMade { HappenedAt = Now, Place = "prep", Name = "Prep room", PlaceKind = PlaceKind.Room }));
        return book;
    }

    /// <summary>Makes the book, books some receipts and weigh-ins, and closes it.</summary>
    public void MakeAndClose(int transactions = 6)
    {
        using var book = Make();
        for (var i = 1; i < transactions; i++)
            Receive(book, $"öl \"{i}\"");
    }

    public static ContainerId Receive(StockBook book, string content = "bromine", decimal grams = 100m)
    {
        var id = book.Ledger.State.NewId();
        book.Append(new Transaction(
            "Ada",
            new Received { HappenedAt = Now, Container = id, Content = content, Lot = new Lot { How = LotOrigin.Made }, To = "prep", Quantity = $"{grams} g", NetGrams = grams },
            new Weighed { HappenedAt = Now, Container = id, GrossGrams = grams + 50.25m }));
        return id;
    }

    public BookUnavailableException Refused(bool readOnly = false)
    {
        var refusal = Assert.Throws<BookUnavailableException>(() => Open(readOnly).Dispose());
        Assert.DoesNotContain('\n', refusal.Message);
        return refusal;
    }

    /// <summary>All files of the book and their bytes, but for the lock and its holder.</summary>
    public Dictionary<string, byte[]> Bytes() => BytesOf(Folder);

    public static Dictionary<string, byte[]> BytesOf(string folder) =>
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Where(f => !Path.GetFileName(f).StartsWith("lock", StringComparison.Ordinal))
            .ToDictionary(f => f, File.ReadAllBytes, StringComparer.Ordinal);

    public void PutBack(Dictionary<string, byte[]> files)
    {
        foreach (var file in Directory.EnumerateFiles(Folder))
            File.Delete(file);
        foreach (var (path, bytes) in files)
            File.WriteAllBytes(path, bytes);
    }

    public void Dispose() => Directory.Delete(_root, recursive: true);

    private sealed class StillClock : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone { get; } = TimeZoneInfo.CreateCustomTimeZone("still", Now.Offset, "still", "still");

        public override DateTimeOffset GetUtcNow() => Now.ToUniversalTime();
    }
}
