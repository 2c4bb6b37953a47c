using Stockroom.Chemistry.Catalogue;
using Stockroom.Storage.Exports;

namespace Stockroom.Imports;

/// <summary>Which column of a file is which field. A unit in a header ("Volume (mL)") is that of the column's bare numbers.</summary>
internal sealed class ColumnMap
{
    private const string LeftOut = "-";

    // Shorter words are too near to each other to tell a slip from another word.
    private const int ShortestMistyped = 6;

    private static readonly string[] Units = ["mg", "g", "kg", "ml", "l"];
    private static readonly string[] QuantityHeaders = ["amount", "quantity", "volume", "mass", "weight", "size", "qty"];

    private readonly Dictionary<string, int> _columns = new(StringComparer.Ordinal);
    private readonly string[] _header;

    private ColumnMap(string[] header) => _header = header;

    /// <summary>Unit for bare numbers of the quantity; null where the header names none.</summary>
    public string? QuantityUnit { get; private set; }

    /// <summary>Headers that no field is known for; their cells are not used.</summary>
    public List<string> Unused { get; } = [];

    public bool Has(string field) => _columns.ContainsKey(field);

    /// <summary>The cell of a field; empty where there is none.</summary>
    public string Cell(CsvRow row, string field) => _columns.TryGetValue(field, out var at) && at < row.Cells.Count ? row.Cells[at] : "";

    /// <summary>The header of a field's column; the field itself where it has none.</summary>
    public string HeaderOf(string field) => _columns.TryGetValue(field, out var at) ? _header[at].Trim() : field;

    /// <summary>Number of columns of the header.</summary>
    public int Count => _header.Length;

    /// <summary>Maps a header.</summary>
    /// <param name="header">The file's first row.</param>
    /// <param name="fields">Fields there are.</param>
    /// <param name="stated">"COLUMN=FIELD" as typed; "COLUMN=-" leaves a column out.</param>
    /// <exception cref="DocumentException">Two columns are one field, a stated column is not there, or a header looks mistyped.</exception>
    public static ColumnMap Of(CsvRow header, IReadOnlyList<ImportField> fields, IReadOnlyList<(string Column, string Field)> stated)
    {
        var map = new ColumnMap([.. header.Cells]);
        var taken = map.TakeStated(header, fields, stated);
        for (var i = 0; i < map._header.Length; i++)
        {
            if (taken.Contains(i) || string.IsNullOrWhiteSpace(map._header[i]))
                continue;
            if (fields.FirstOrDefault(f => f.IsCalled(map._header[i])) is { } field)
                map.Set(header.Line, field.Name, i);
            else if (!map.TakeQuantity(header.Line, fields, i))
                map.LeaveOut(header.Line, fields, i);
        }

        return map;
    }

    private HashSet<int> TakeStated(CsvRow header, IReadOnlyList<ImportField> fields, IReadOnlyList<(string Column, string Field)> stated)
    {
        var taken = new HashSet<int>();
        foreach (var (column, name) in stated)
        {
            var at = Array.FindIndex(_header, h => string.Equals(h.Trim(), column.Trim(), StringComparison.OrdinalIgnoreCase));
            if (at < 0)
                throw new DocumentException(header.Line, $"there is no column '{column}' to map; the columns are {string.Join(", ", _header)}");
            if (!taken.Add(at))
                throw new DocumentException(header.Line, $"the column '{column}' is mapped twice");
            if (name == LeftOut)
                continue;
            var field = fields.FirstOrDefault(f => f.Name == name)
                ?? throw new DocumentException(header.Line, $"'{name}' is not a field to map '{column}' to{Nearest(name, fields)}; there are {string.Join(", ", fields.Select(f => f.Name))}, and - to leave the column out");
            Set(header.Line, field.Name, at);
        }

        return taken;
    }

    private void Set(int line, string field, int column)
    {
        if (_columns.TryGetValue(field, out var other))
            throw new DocumentException(line, $"the columns '{_header[other]}' and '{_header[column]}' both stand for '{field}'; leave one out with --map \"{_header[column]}=-\"");
        _columns[field] = column;
    }

    // "Volume (mL)": a quantity whose unit stands in the header.
    private bool TakeQuantity(int line, IReadOnlyList<ImportField> fields, int column)
    {
        var plain = ImportField.Plain(_header[column]);
        var unit = Units.Where(u => QuantityHeaders.Any(q => plain == q + u || plain == q + "in" + u)).OrderByDescending(u => u.Length).FirstOrDefault();
        if (fields.All(f => f.Name != "quantity"))
            return false;
        if (unit is null)
            return HasOtherUnit(_header[column]) ? throw new DocumentException(line, $"the unit of the column '{_header[column]}' is not known; known are mg, g, kg, mL, L: convert it, or say --map \"{_header[column]}=-\" to leave it out") : false;
        Set(line, "quantity", column);
        QuantityUnit = unit switch { "ml" => "mL", "l" => "L", _ => unit };
        return true;
    }

    // "Volume (oz)": an amount that would be lost, or taken for another.
    private static bool HasOtherUnit(string header)
    {
        var cut = header.IndexOfAny(['(', '[']);
        return cut > 0 && header.TrimEnd() is [.., ')' or ']'] && QuantityHeaders.Contains(ImportField.Plain(header[..cut]));
    }

    private void LeaveOut(int line, IReadOnlyList<ImportField> fields, int column)
    {
        var header = _header[column];
        var near = NearestNames.To(header, fields.Where(f => !Has(f.Name)).SelectMany(f => f.Headers.Append(f.Name)).Where(n => n.Length > 4), 1);
        if (ImportField.Plain(header).Length >= ShortestMistyped && near.Count > 0)
            throw new DocumentException(line, $"the column '{header}' is not known and looks like '{near[0]}'; say --map \"{header}={fields.First(f => f.IsCalled(near[0])).Name}\", or --map \"{header}=-\" to leave it out");
        Unused.Add(header);
    }

    private static string Nearest(string name, IReadOnlyList<ImportField> fields) =>
        NearestNames.To(name, fields.Select(f => f.Name)) is { Count: > 0 } near ? $", nearest: {string.Join(", ", near)}" : "";
}
