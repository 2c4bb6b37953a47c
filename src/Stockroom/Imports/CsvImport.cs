using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Book.Places;
using Stockroom.Storage.Exports;

namespace Stockroom.Imports;

/// <summary>A row that can be booked, in words.</summary>
internal sealed record BookableRow(int Line, string Subject, string Words);

/// <summary>What a file would do to a book.</summary>
/// <param name="Rows">Rows of the file that hold anything.</param>
/// <param name="Bookable">Those that can be booked.</param>
/// <param name="Refused">Those that cannot, and why.</param>
/// <param name="Entries">What would be booked, all together or not at all; empty if any row is refused.</param>
/// <param name="UnusedColumns">Columns that no field is known for.</param>
internal sealed record CsvOutcome(int Rows, IReadOnlyList<BookableRow> Bookable, IReadOnlyList<DocumentFault> Refused, IReadOnlyList<Entry> Entries, IReadOnlyList<string> UnusedColumns);

/// <summary>
/// Reads a keeper's list of containers, or of places (a file with a column for the kind and none for the content), against a
/// book, and says row by row what would be booked. It writes nothing.
/// </summary>
internal sealed class CsvImport(Ledger ledger, string by, TimeProvider clock)
{
    private readonly DateTimeOffset _now = clock.GetLocalNow();
    private readonly List<BookableRow> _bookable = [];
    private readonly List<DocumentFault> _refused = [];
    private readonly List<Entry> _entries = [];
    private readonly Dictionary<ContainerId, int> _ids = [];
    private Ledger _ledger = ledger;

    /// <summary>Tries every row.</summary>
    /// <param name="file">The file's bytes.</param>
    /// <param name="stated">Columns and the fields they stand for, as the keeper said.</param>
    /// <exception cref="DocumentException">The file as a whole, or its header, cannot be read.</exception>
    public CsvOutcome Try(byte[] file, IReadOnlyList<(string Column, string Field)> stated)
    {
        var csv = CsvText.Read(file);
        var isOfPlaces = IsOfPlaces(csv.Header, stated);
        var map = ColumnMap.Of(csv.Header, isOfPlaces ? ImportField.OfPlaces : ImportField.OfContainers, stated);
        Require(csv.Header, map, isOfPlaces ? ["name", "kind"] : ["content"]);
        var rows = csv.Rows.Select(r => new ImportRow(map, r)).ToList();
        if (isOfPlaces)
            TryPlaces(rows);
        else
            TryContainers(rows, map);
        return new CsvOutcome(rows.Count, _bookable, [.. _refused.OrderBy(r => r.Line)], _refused.Count == 0 ? _entries : [], map.Unused);
    }

    private static bool IsOfPlaces(CsvRow header, IReadOnlyList<(string Column, string Field)> stated)
    {
        bool Has(IReadOnlyList<ImportField> fields, string name) => stated.Any(s => s.Field == name) || header.Cells.Any(c => fields.First(f => f.Name == name).IsCalled(c));
        return Has(ImportField.OfPlaces, "kind") && (Has(ImportField.OfPlaces, "inside") || !header.Cells.Any(c => ImportField.Plain(c) == "content"))
            && !header.Cells.Any(c => ImportField.Plain(c) is "content" or "contents" or "substance" or "chemical");
    }

    private static void Require(CsvRow header, ColumnMap map, string[] fields)
    {
        if (fields.FirstOrDefault(f => !map.Has(f)) is { } missing)
            throw new DocumentException(header.Line, $"no column stands for '{missing}'; name it so, or say --map \"COLUMN={missing}\" (the columns are {string.Join(", ", header.Cells)})");
    }

    // A place may stand in the file before the one it is inside of.
    private void TryPlaces(List<ImportRow> rows)
    {
        var at = _now;
        foreach (var row in rows.OrderBy(LevelOf).ThenBy(r => r.Line))
            Take(row, () => [PlaceRows.Read(row, _ledger.State, at)]);
        _bookable.Sort((a, b) => a.Line.CompareTo(b.Line));
    }

    private static PlaceLevel LevelOf(ImportRow row)
    {
        try
        {
            return row.Text("kind") is { } kind ? PlaceKind.Parse(kind).Level : PlaceLevel.Room;
        }
        catch (BookRefusal)
        {
            return PlaceLevel.Room;
        }
    }

    private void TryContainers(List<ImportRow> rows, ColumnMap map)
    {
        var makesPlaces = _ledger.State.Places.IsEmpty && map.Has("place_steps");
        var reader = new ContainerRows(clock, DateOnly.FromDateTime(_now.DateTime), map.QuantityUnit);
        FindIds(rows);
        foreach (var row in rows)
        {
            Take(row, () =>
            {
                CheckId(row);
                if (makesPlaces && row.Text("place_steps") is not null)
                    Book([.. PlaceRows.Missing(row, _ledger.State, _now)]);
                var words = row.Text("place") ?? row.Text("place_path") ?? throw row.Wrong("place", "is empty; where does it stand?");
                return reader.Read(row, _ledger.State, _ids.Keys, PlaceRows.Find(words, _ledger.State));
            });
        }
    }

    // Ids that stand anywhere in the file are not given to rows that have none.
    private void FindIds(List<ImportRow> rows)
    {
        foreach (var row in rows)
        {
            if (IdOf(row) is { } id)
                _ids.TryAdd(id, row.Line);
        }
    }

    private static ContainerId? IdOf(ImportRow row)
    {
        try
        {
            return row.Text("id") is { } typed ? Verbs.BookAccess.Id(typed) : null;
        }
        catch (BookRefusal)
        {
            return null;
        }
    }

    private void CheckId(ImportRow row)
    {
        if (IdOf(row) is { } id && _ids[id] != row.Line)
            throw row.Wrong("id", $"{id} stands already on line {_ids[id]}");
    }

    private void Take(ImportRow row, Func<IReadOnlyList<Entry>> read)
    {
        try
        {
            var entries = read();
            Book(entries);
            _bookable.Add(new BookableRow(row.Line, entries[0].Container?.ToString() ?? entries[0].Place ?? "", Verbs.EntryWords.Of(entries[0])));
        }
        catch (Exception e) when (e is BookRefusal or Verbs.RefusedException)
        {
            _refused.Add(new DocumentFault(row.Line, e.Message));
        }
    }

    private void Book(IReadOnlyList<Entry> entries)
    {
        if (entries.Count == 0)
            return;
        _ledger = _ledger.Append(new Transaction(by, entries), _now).After;
        _entries.AddRange(entries);
    }
}
