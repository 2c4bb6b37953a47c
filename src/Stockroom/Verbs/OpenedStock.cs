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

    public IStockBook Book => _book;

    public string Name => Path.GetFileName(Path.TrimEndingDirectorySeparator(_book.Folder));

    public BookState State => Stock.State;

    /// <summary>Opens the book and judges it as it was on a day, or as it is today.</summary>
    public static OpenedStock Open(string? folder, DateOnly? asOf, Surroundings around, ClassTable? table = null)
    {
        var book = BookAccess.Read(folder, around);
        var day = asOf ?? around.Today;
        return new OpenedStock(book, new StockAssessment(book.Ledger.StateOn(asOf), StockFacts.Default, day, table: table));
    }

    public TodayReport Report() => new(StockDesk.TodayOf(Stock, Name), Stock);

    public void Dispose() => _book.Dispose();
}

/// <summary>What is wrong and due, with the assessment it comes from.</summary>
internal sealed record TodayReport(Views.TodayView View, StockAssessment Stock);
