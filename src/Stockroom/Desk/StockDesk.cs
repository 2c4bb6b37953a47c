using System.Globalization;
using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Holdings;
using Stockroom.Book;
using Stockroom.Book.Places;
using Stockroom.Storage;
using Stockroom.Views;

namespace Stockroom.Desk;

/// <summary>Answers what the screens and the plain-line verbs ask, from an assessment of the book on a day.</summary>
internal sealed class StockDesk(BookOnSight book, StockFacts facts, TimeProvider clock) : IDesk
{
    private (long Version, DateOnly Day, StockAssessment Stock)? _made;

    public string BookName => Path.GetFileName(Path.TrimEndingDirectorySeparator(book.Folder));

    public long Version => book.Version;

    public Task Verified => book.Whole;

    public Standing? Standing => book switch
    {
        { Damage.Count: > 0 } => new Standing(Attention.Danger, "DAMAGED BOOK, to read only: what holds is shown; Today says what fails"),
        { Whole.IsCompleted: false } => new Standing(Attention.Notice, "the record behind this is still being verified"),
        _ => null,
    };

    /// <summary>The assessment of today; made anew when the book or the day has changed.</summary>
    public StockAssessment Stock
    {
        get
        {
            var today = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
            if (_made is not { } made || made.Version != Version || made.Day != today)
                _made = made = (Version, today, new StockAssessment(book.State, facts, today));
            return made.Stock;
        }
    }

    public TodayView Today()
    {
        var today = TodayOf(Stock, BookName);
        return book.Damage.Count == 0 ? today : today with { Wrong = [.. book.Damage.Select(Damaged), .. today.Wrong] };
    }

    public IReadOnlyList<HoldingRow> Holdings()
    {
        var signs = Signs(Stock);
        return [.. Stock.Holdings.Select(h => Row(h, signs))];
    }

    public Card CardOf(string containerId) => book.HasNoLedger
        ? new Card(containerId, [new("Record", [new("", "the entries cannot be read: " + book.Damage[0], Attention.Danger)])])
        : CardWriter.Write(Stock.Of(ContainerId.Parse(containerId)), Stock, book.Ledger);

    public IReadOnlyList<PlaceNode> Places()
    {
        var rows = Holdings().ToDictionary(r => r.Id, StringComparer.Ordinal);
        return [.. Stock.State.PlacesInside(null).Select(p => Node(p, rows))];
    }

    internal static TodayView TodayOf(StockAssessment stock, string name) => new(
        stock.Today,
        name,
        stock.Holdings.Count,
        [.. stock.Wrong.Select(w => new WrongLine(WeightOf(w.Severity), w.What, w.Because, w.Source, [.. w.Containers.Select(c => c.ToString())]))],
        [.. stock.Due.Select(d => Due(d, stock))]);

    private static WrongLine Damaged(string damage) =>
        new(Attention.Danger, "The book is damaged", $"{damage}. Nothing can be booked in it: 'stockroom verify' names all that fails, 'stockroom repair NEW_FOLDER' saves what is sound.", "verification of the journal and the LiteDB file", []);

    private static DueLine Due(Assessment.Rounds.DueItem item, StockAssessment stock)
    {
        var holding = stock.Of(item.Container);
        return new DueLine(item.Container.ToString(), holding.Content.Name, holding.PlaceWords, item.What, item.Since, item.Because, item.Source);
    }

    private static Attention WeightOf(Severity severity) => severity switch
    {
        Severity.Danger => Attention.Danger,
        Severity.Warning => Attention.Warning,
        _ => Attention.Notice,
    };

    private static Dictionary<ContainerId, string> Signs(StockAssessment stock)
    {
        var signs = new Dictionary<ContainerId, string>();
        foreach (var due in stock.Due)
            signs[due.Container] = "*";
        foreach (var wrong in stock.Wrong.Where(w => w.Containers.Count > 0))
            signs[wrong.Containers[0]] = "!";
        foreach (var holding in stock.Holdings.Where(h => h.Container.HandsOff is not null))
            signs[holding.Id] = "-";
        return signs;
    }

    private static HoldingRow Row(Holding holding, Dictionary<ContainerId, string> signs) => new(
        holding.Id.ToString(),
        holding.Content.Name,
        Words.Grams(holding.Container.NetGrams),
        holding.PlaceWords,
        signs.GetValueOrDefault(holding.Id, " "),
        Words.Loss(holding),
        SearchTextOf(holding));

    private static string SearchTextOf(Holding holding) => string.Join(' ', new[]
    {
        holding.Id.ToString(),
        holding.Content.Name,
        string.Join(' ', holding.Content.Parts.Select(p => $"{p.Substance.Name} {p.Substance.Formula?.Text} {p.Substance.Cas?.Text}")),
        holding.PlaceWords,
        holding.Container.Vessel,
        holding.Container.Lot.Origin,
        string.Join(' ', holding.Profile.Families.Select(f => f.Family.PlainName)),
    }).ToLower(CultureInfo.InvariantCulture);

    private PlaceNode Node(Place place, Dictionary<string, HoldingRow> rows)
    {
        var inside = Stock.State.PlacesInside(place.Id).Select(p => Node(p, rows)).ToList();
        var own = Stock.State.ContainersIn(place.Id).Select(c => rows[c.Id.ToString()]).ToList();
        return new PlaceNode(place.Id, place.Name, place.Kind.Word, Note(place, rows), inside, own);
    }

    private string Note(Place place, Dictionary<string, HoldingRow> rows)
    {
        var all = Stock.State.ContainersIn(place.Id, deep: true).Select(c => rows[c.Id.ToString()]).ToList();
        var limits = Stock.State.LimitsAt(place.Id);
        var wrong = all.Count(r => r.Sign is "!" or "-");
        var parts = new List<string>();
        if (limits is { MinCelsius: { } min, MaxCelsius: { } max } && place.Level <= PlaceLevel.Cabinet)
            parts.Add($"{min:0} to {max:0} C");
        parts.Add($"{all.Count} container{(all.Count == 1 ? "" : "s")}");
        if (wrong > 0)
            parts.Add($"{wrong} wrong");
        return string.Join(", ", parts);
    }
}
