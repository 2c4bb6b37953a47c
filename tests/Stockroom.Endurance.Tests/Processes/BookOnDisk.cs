using Stockroom.Endurance.Tests.Books;
using Stockroom.Storage;

namespace Stockroom.Endurance.Tests.Processes;

/// <summary>A book on the machine's own disk with one container in it, taken away afterwards.</summary>
internal sealed class BookOnDisk : IDisposable
{
    public const int FirstEntries = 4;

    private readonly string _root = Directory.CreateTempSubdirectory("stockroom-endurance-").FullName;

    public BookOnDisk()
    {
        using var book = StockBookFolder.Create(Folder, new StillClock());
        Steps.Begin(book);
        book.Append(Steps.Draw(book.Ledger, new Random(1), 0));
    }

    public string Folder => Path.Combine(_root, "harbour.stockbook");

    public void Dispose() => Directory.Delete(_root, recursive: true);
}
