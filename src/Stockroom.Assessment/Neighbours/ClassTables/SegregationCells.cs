using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Neighbours.ClassTables;

/// <summary>One cell of a class table. The code is null where the cell is not known well enough to be shown.</summary>
/// <param name="Code">As printed; empty for a blank cell.</param>
/// <param name="Meaning">In plain words.</param>
/// <param name="Separation">What answers to it on a shelf, by analogy; null where the cell is not known.</param>
/// <param name="Clause">Where the table or the code stands.</param>
/// <param name="Verified">True where the source was read for the cell.</param>
/// <param name="Provenance">Source of the cell.</param>
public sealed record SegregationCell(string? Code, string Meaning, Separation? Separation, string Clause, bool Verified, Provenance Provenance);

/// <summary>The cells of the three class tables, as printed, from road-, sea-segregation.tsv and storage-joint.tsv.</summary>
public static class SegregationCells
{
    private static readonly Dictionary<string, Separation> Separations = new(StringComparer.Ordinal)
    {
        ["same tray"] = Separation.SameTray, ["own tray"] = Separation.OwnTray, ["own cabinet"] = Separation.OwnCabinet, ["far apart"] = Separation.FarApart,
    };

    private static readonly Lazy<Dictionary<(string Table, string Code), CodeMeaning>> Codes = new(ReadCodes);
    private static readonly Lazy<IReadOnlyList<string>[]> LabelsOf = new(() =>
        [[], .. new[] { ClassTable.Road, ClassTable.Sea, ClassTable.Storage }.Select(t => (IReadOnlyList<string>)[.. CellsOf(t).Keys.Select(k => k.A).Distinct(StringComparer.Ordinal)])]);
    private static readonly Lazy<Dictionary<(string A, string B), SegregationCell>> Road = new(ReadRoad);
    private static readonly Lazy<Dictionary<(string A, string B), SegregationCell>> Sea = new(ReadSea);
    private static readonly Lazy<Dictionary<(string A, string B), SegregationCell>> Storage = new(ReadStorage);

    /// <summary>Labels of a table's rows.</summary>
    public static IReadOnlyList<string> Labels(ClassTable table) => LabelsOf.Value[(int)table];

    /// <summary>The cell of two rows, either way round; null where the table has no such row.</summary>
    public static SegregationCell? Find(ClassTable table, string a, string b) => CellsOf(table).GetValueOrDefault((a, b));

    /// <summary>A cell of a code by itself, for what stands in a paragraph beside the table.</summary>
    internal static SegregationCell OfCode(ClassTable table, string code)
    {
        var meaning = Codes.Value[(ClassTableWords.Of(table), code)];
        return new SegregationCell(code, meaning.Text, meaning.Separation, meaning.Clause, Verified: true, meaning.Provenance);
    }

    private static Dictionary<(string A, string B), SegregationCell> CellsOf(ClassTable table) => table switch
    {
        ClassTable.Road => Road.Value,
        ClassTable.Sea => Sea.Value,
        ClassTable.Storage => Storage.Value,
        _ => throw new ArgumentOutOfRangeException(nameof(table), table, "has no cells"),
    };

    private static Dictionary<(string A, string B), SegregationCell> ReadRoad()
    {
        var cells = new Dictionary<(string A, string B), SegregationCell>();
        foreach (var row in EmbeddedTables.Facts("road-segregation.tsv", "a", "b", "code", "verified").Rows)
            Enter(cells, row, [row.Text("a")], [row.Text("b")], Cell(row, "road", row.TextOrNull("code") ?? ""));
        return cells;
    }

    private static Dictionary<(string A, string B), SegregationCell> ReadSea()
    {
        var cells = new Dictionary<(string A, string B), SegregationCell>();
        foreach (var row in EmbeddedTables.Facts("sea-segregation.tsv", "a", "b", "code", "later", "verified").Rows)
        {
            var cell = Cell(row, "sea", row.Text("code"));
            if (row.TextOrNull("later") is { } later)
            {
                var stricter = Meaning(row, "sea", later);
                cell = cell with
                {
                    Meaning = $"{cell.Meaning}; a later amendment is believed to say {later}, {stricter.Text}, which counts here until a current copy was read",
                    Separation = stricter.Separation > cell.Separation ? stricter.Separation : cell.Separation,
                };
            }

            Enter(cells, row, row.List("a"), row.List("b"), cell);
        }

        return cells;
    }

    private static Dictionary<(string A, string B), SegregationCell> ReadStorage()
    {
        var byWord = Codes.Value.Where(c => c.Key.Table == "storage").ToDictionary(c => c.Value.Word!, c => c.Key.Code, StringComparer.Ordinal);
        var cells = new Dictionary<(string A, string B), SegregationCell>();
        foreach (var row in EmbeddedTables.Facts("storage-joint.tsv", "a", "b", "verdict", "verified").Rows)
        {
            var cell = row.YesNo("verified")
                ? Cell(row, "storage", row.OneOf("verdict", byWord))
                : new SegregationCell(null, "unknown: this cell of the table was not read; look it up before the two are put together", null, "TRGS 510, 13.3", Verified: false, row.Provenance);
            Enter(cells, row, [row.Text("a")], [row.Text("b")], cell);
        }

        return cells;
    }

    private static SegregationCell Cell(TableRow row, string table, string code)
    {
        var meaning = Meaning(row, table, code);
        return new SegregationCell(code, meaning.Text, meaning.Separation, meaning.Clause, row.YesNo("verified"), row.Provenance);
    }

    private static CodeMeaning Meaning(TableRow row, string table, string code) =>
        Codes.Value.GetValueOrDefault((table, code)) ?? throw row.Wrong("code", $"'{code}' is not a code of class-table-codes.tsv");

    private static void Enter(Dictionary<(string A, string B), SegregationCell> cells, TableRow row, IReadOnlyList<string> a, IReadOnlyList<string> b, SegregationCell cell)
    {
        foreach (var x in a)
        {
            foreach (var y in b)
            {
                if (!cells.TryAdd((x, y), cell) && cells[(x, y)] != cell)
                    throw row.Wrong("b", $"the cell of {x} and {y} stands twice");
                cells[(y, x)] = cell;
            }
        }
    }

    private static Dictionary<(string Table, string Code), CodeMeaning> ReadCodes()
    {
        var codes = new Dictionary<(string Table, string Code), CodeMeaning>();
        foreach (var row in EmbeddedTables.Facts("class-table-codes.tsv", "table", "code", "word", "meaning", "separation", "clause").Rows)
        {
            var meaning = new CodeMeaning(row.TextOrNull("word"), row.Text("meaning"), row.OneOf("separation", Separations), row.Text("clause"), row.Provenance);
            if (!codes.TryAdd((row.Text("table"), row.TextOrNull("code") ?? ""), meaning))
                throw row.Wrong("code", "stands twice");
        }

        return codes;
    }

    private sealed record CodeMeaning(string? Word, string Text, Separation Separation, string Clause, Provenance Provenance);
}
