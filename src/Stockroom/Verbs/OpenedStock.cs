using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Neighbours.ClassTables;
using Stockroom.Book;
using Stockroom.Desk;
using Stockroom.Storage;

namespace Stockroom.Verbs;

/// <summary>A book opened to read, with its assessment for a day.</summary>
internal sealed class OpenedStock : IDisposable
{
    private readonly StockBook _book;

    private OpenedStock(StockBook book, StockAssessment stock)
    {
        _book = book;
        Stock = stock;
    }

    public StockAssessment Stock { get; }

    public StockBook Book => _book;

    /// <summary>When the last entry was booked; the start of the day that is looked at where there is none.</summary>
    public DateTimeOffset LastChange => _book.Ledger.Entries is [.., var last] ? last.RecordedAt : new DateTimeOffset(Stock.Today, TimeOnly.MinValue, TimeSpan.Zero);

    public string Name => Path.GetFileName(Path.TrimEndingDirectorySeparator(_book.Folder));

    public BookState State => Stock.State;

    /// <summary>Opens the book and judges it as it was on a day, or as it is today; a damaged one as far as it holds.</summary>
    public static OpenedStock Open(string? folder, DateOnly? asOf, Surroundings around, ClassTable? table = null) =>
        Of(BookAccess.Read(folder, around), asOf, around, table);

    /// <summary>The same for what leaves the house: a damaged book is refused.</summary>
    public static OpenedStock OpenWhole(string? folder, DateOnly? asOf, Surroundings around, ClassTable? table = null) =>
        Of(BookAccess.ReadWhole(folder, around), asOf, around, table);

    private static OpenedStock Of(StockBook book, DateOnly? asOf, Surroundings around, ClassTable? table = null)
    {
        var day = asOf ?? around.Today;
        return new OpenedStock(book, new StockAssessment(book.Ledger.StateOn(asOf), StockFacts.Default, day, table: table));
    }

    public byte[] ReadAttachment(string sha256) => _book.ReadAttachment(sha256);

    public TodayReport Report() => new(StockDesk.TodayOf(Stock, Name), Stock);

    public void Dispose() => _book.Dispose();
}

/// <summary>What is wrong and due, with the assessment it comes from.</summary>
internal sealed record TodayReport(Views.TodayView View, StockAssessment Stock);
