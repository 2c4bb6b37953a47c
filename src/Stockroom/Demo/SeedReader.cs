using Stockroom.Assessment.Intake;
using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Book.Places;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Demo;

/// <summary>
/// Reads a collection (places, containers, what happened to them) into entries of the ledger. Everything is checked
/// before anything is booked; an error names file, line and column.
/// </summary>
internal sealed class SeedReader(TimeProvider clock)
{
    private const string OrphanPrefix = "orphan:";
    private static readonly string[] IntakeColumns = ["amount", "vessel", "closure", "cover"];

    private readonly IntakeDesk _intake = new(PropertyFacts.Default, WareCatalogue.Default);
    private readonly DateOnly _today = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    /// <summary>The entries in the order in which they are booked: places, containers, history.</summary>
    /// <exception cref="TableException">A cell cannot be, with file, line and column.</exception>
    public IReadOnlyList<Entry> Read(SeedFiles files)
    {
        var entries = new List<SeedEntry>();
        var places = ReadPlaces(files.Places, entries);
        var containers = ReadContainers(files.Containers, places, entries);
        if (files.History is { } history)
            entries.AddRange(new HistoryReader(clock, containers, _today).Read(history));
        CheckThatAllCanBeBooked(entries);
        return [.. entries.Select(e => e.Entry)];
    }

    // The ledger has rules of its own; which row breaks one is looked for only when one does.
    private void CheckThatAllCanBeBooked(List<SeedEntry> entries)
    {
        var book = new MemoryStockBook(clock);
        try
        {
            book.Append(new Transaction("the collection", [.. entries.Select(e => e.Entry)]));
        }
        catch (BookRefusal)
        {
            var before = new MemoryStockBook(clock);
            foreach (var (entry, row, column) in entries)
                Refusing(row, column, () => before.Append(new Transaction("the collection", entry)));
            throw;
        }
    }

    private HashSet<string> ReadPlaces(string text, List<SeedEntry> entries)
    {
        var table = TableReader.ReadPlain(
            SeedFiles.PlacesName, text, "place", "name", "kind", "inside", "order", "height_m", "tray", "mean_c", "min_c", "max_c", "daily_swing_k");
        var ids = new HashSet<string>(StringComparer.Ordinal);
        foreach (var row in table.Rows)
        {
            var id = row.Text("place");
            if (!ids.Add(id))
                throw row.Wrong("place", $"'{id}' stands twice");
            if (row.TextOrNull("inside") is { } inside && !ids.Contains(inside))
                throw row.Wrong("inside", $"'{inside}' does not stand above in this table");
            var made = new PlaceMade
            {
                Place = id,
                Name = row.Text("name"),
                PlaceKind = Refusing(row, "kind", () => PlaceKind.Parse(row.Text("kind"))),
                Inside = row.TextOrNull("inside"),
                Limits = LimitsOf(row),
                HappenedAt = Moment(_today.AddYears(-20)),
            };
            entries.Add(new SeedEntry(made, row, "place"));
        }

        return ids;
    }

    private static PlaceLimits LimitsOf(TableRow row) => new()
    {
        Position = row.IntegerOrNull("order"),
        HeightMetres = row.DecimalOrNull("height_m"),
        LeakTight = row.TextOrNull("tray") is null ? null : row.YesNo("tray"),
        MeanCelsius = row.DecimalOrNull("mean_c"),
        MinCelsius = row.DecimalOrNull("min_c"),
        MaxCelsius = row.DecimalOrNull("max_c"),
        SwingKelvin = row.DecimalOrNull("daily_swing_k"),
    };

    private Dictionary<string, ContainerId> ReadContainers(string text, HashSet<string> places, List<SeedEntry> entries)
    {
        var table = TableReader.ReadPlain(
            SeedFiles.ContainersName, text, "container", "content", "amount", "vessel", "closure", "cover", "cover_mm", "packing", "place", "how", "origin", "received", "opened", "sealed", "gross_g", "note");
        var ids = new Dictionary<string, ContainerId>(StringComparer.Ordinal);
        foreach (var row in table.Rows)
        {
            var name = row.Text("container");
            var id = BookState.Empty.NewId(ids.Values);
            if (!ids.TryAdd(name, id))
                throw row.Wrong("container", $"'{name}' stands twice");
            if (!places.Contains(row.Text("place")))
                throw row.Wrong("place", $"'{row.Text("place")}' is not a place of {SeedFiles.PlacesName}");
            entries.Add(new SeedEntry(Receive(row, id), row, "container"));
            if (row.TextOrNull("opened") is not null)
                entries.Add(new SeedEntry(new Opened { Container = id, HappenedAt = Moment(Date(row, "opened")) }, row, "opened"));
            if (row.TextOrNull("sealed") is not null)
                entries.Add(new SeedEntry(new Sealed { Container = id, HappenedAt = Moment(Date(row, "sealed")) }, row, "sealed"));
        }

        return ids;
    }

    // The intake's line begins with the words it refuses; they tell the column.
    private Received Receive(TableRow row, ContainerId id)
    {
        var (request, moment) = (RequestOf(row), Moment(Date(row, "received")));
        if (request.Amount is { } amount && !TypedAmount.TryParse(amount, out _, out var problem))
            throw row.Wrong("amount", problem);
        try
        {
            return _intake.Receive(request, id, moment);
        }
        catch (BookRefusal e)
        {
            var column = Array.Find(IntakeColumns, c => row.TextOrNull(c) is { } words && e.Message.StartsWith($"'{words}'", StringComparison.Ordinal));
            throw row.Wrong(column ?? "content", e.Message);
        }
    }

    private static IntakeRequest RequestOf(TableRow row)
    {
        var content = row.Text("content");
        var orphan = content.StartsWith(OrphanPrefix, StringComparison.OrdinalIgnoreCase);
        return new IntakeRequest
        {
            Content = orphan ? "orphan" : content,
            Seen = orphan ? content[OrphanPrefix.Length..].Trim() : null,
            Amount = row.TextOrNull("amount"),
            Vessel = row.TextOrNull("vessel"),
            Closure = row.TextOrNull("closure"),
            Cover = row.TextOrNull("cover"),
            CoverDepthMillimetres = row.DecimalOrNull("cover_mm"),
            Packing = row.TextOrNull("packing"),
            Place = row.Text("place"),
            How = row.TextOrNull("how") is null ? LotOrigin.Bought : Refusing(row, "how", () => Lot.ParseOrigin(row.Text("how"))),
            Origin = row.TextOrNull("origin"),
            GrossGrams = row.DecimalOrNull("gross_g"),
            Note = row.TextOrNull("note"),
        };
    }

    private DateOnly Date(TableRow row, string column) => DateOf(row, column, _today);

    internal static DateOnly DateOf(TableRow row, string column, DateOnly today) =>
        RelativeDate.Read(row.Text(column), today)
        ?? throw row.Wrong(column, $"'{row.Text(column)}' is not a date; write 2025-03-31, today, or for example 14 months ago");

    internal static T Refusing<T>(TableRow row, string column, Func<T> act)
    {
        try
        {
            return act();
        }
        catch (BookRefusal e)
        {
            throw row.Wrong(column, e.Message);
        }
    }

    private DateTimeOffset Moment(DateOnly day) => Verbs.Dates.MomentOf(day, clock);
}
