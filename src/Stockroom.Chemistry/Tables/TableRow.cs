using System.Globalization;

namespace Stockroom.Chemistry.Tables;

/// <summary>One row of a table; each reading of a cell checks it and names file, line and column when it is wrong.</summary>
public sealed class TableRow
{
    private readonly IReadOnlyList<string> _columns;
    private readonly string[] _cells;

    internal TableRow(string file, int line, IReadOnlyList<string> columns, string[] cells)
    {
        File = file;
        Line = line;
        _columns = columns;
        _cells = cells;
    }

    public string File { get; }

    public int Line { get; }

    /// <summary>Where the row's fact comes from. Source and as_of must be stated; a locator may be "-".</summary>
    public Provenance Provenance => new(Text("source"), Text("locator"), Text("as_of"));

    /// <summary>The cell's text, which must not be empty.</summary>
    public string Text(string column)
    {
        var cell = Cell(column);
        return cell.Length > 0 ? cell : throw Wrong(column, "is empty");
    }

    /// <summary>The cell's text, or null where nothing is stated.</summary>
    public string? TextOrNull(string column)
    {
        var cell = Cell(column);
        return cell.Length == 0 ? null : cell;
    }

    /// <summary>A finite number.</summary>
    public double Number(string column)
    {
        var cell = Text(column);
        return double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)
            ? value
            : throw Wrong(column, $"'{cell}' is not a number; write for example 12.5 or 1.2e-9");
    }

    public double? NumberOrNull(string column) => Cell(column).Length == 0 ? null : Number(column);

    /// <summary>A finite number above zero.</summary>
    public double Positive(string column)
    {
        var value = Number(column);
        return value > 0 ? value : throw Wrong(column, $"{value} must be above zero");
    }

    public double? PositiveOrNull(string column) => Cell(column).Length == 0 ? null : Positive(column);

    /// <summary>A decimal number, kept exactly as written.</summary>
    public decimal Decimal(string column)
    {
        var cell = Text(column);
        return decimal.TryParse(cell, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value)
            ? value
            : throw Wrong(column, $"'{cell}' is not a decimal number; write for example 26.5");
    }

    public decimal? DecimalOrNull(string column) => Cell(column).Length == 0 ? null : Decimal(column);

    public int Integer(string column)
    {
        var cell = Text(column);
        return int.TryParse(cell, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value)
            ? value
            : throw Wrong(column, $"'{cell}' is not a whole number");
    }

    public int? IntegerOrNull(string column) => Cell(column).Length == 0 ? null : Integer(column);

    /// <summary>"yes" or "no"; an empty cell is no.</summary>
    public bool YesNo(string column) => Cell(column) switch
    {
        "yes" => true,
        "no" or "" => false,
        var other => throw Wrong(column, $"'{other}' must be yes or no"),
    };

    /// <summary>One of a fixed set of words.</summary>
    public T OneOf<T>(string column, IReadOnlyDictionary<string, T> words)
    {
        var cell = Text(column);
        return words.TryGetValue(cell, out var value)
            ? value
            : throw Wrong(column, $"'{cell}' must be one of {string.Join(", ", words.Keys)}");
    }

    /// <summary>The parts of a cell separated by "; ". Empty when nothing is stated.</summary>
    public IReadOnlyList<string> List(string column) =>
        Cell(column).Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    /// <summary>An error that names this row and the column.</summary>
    public TableException Wrong(string column, string problem) => new(File, Line, column, problem);

    private string Cell(string column)
    {
        for (var i = 0; i < _columns.Count; i++)
        {
            if (_columns[i] == column)
                return _cells[i].Trim();
        }

        throw new TableException(File, Line, column, "is not a column of this table");
    }
}
