using System.Globalization;
using Stockroom.Book;
using Stockroom.Book.Encoding;

namespace Stockroom.Imports;

/// <summary>The cells of one row by their fields, read one by one; what is wrong is said with its column.</summary>
internal sealed class ImportRow(ColumnMap map, CsvRow row)
{
    public int Line => row.Line;

    /// <summary>The cell's text as it was before it was guarded; null where it is empty.</summary>
    /// <exception cref="BookRefusal">It is too long or holds a control character.</exception>
    public string? Text(string field)
    {
        var cell = map.Cell(row, field);
        if (string.IsNullOrWhiteSpace(cell))
            return null;
        if (cell.Length > TextLimits.Running + 1)
            throw Wrong(field, $"has {cell.Length} characters; at most {TextLimits.Of(field)} are taken");
        foreach (var c in cell)
        {
            if (char.IsControl(c) && c is not ('\t' or '\r' or '\n'))
                throw Wrong(field, $"holds the control character U+{(int)c:X4}; write it without");
        }

        return FormulaGuard.Take(cell);
    }

    public string Required(string field) => Text(field) ?? throw Wrong(field, "is empty");

    /// <summary>A day as ISO 8601 writes it.</summary>
    public DateOnly? Day(string field)
    {
        if (Text(field)?.Trim() is not { } text)
            return null;
        return DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? day
            : throw Wrong(field, $"'{text}' is not a day; write for example 2025-03-31");
    }

    /// <summary>A decimal number with a point.</summary>
    public decimal? Number(string field)
    {
        if (Text(field)?.Trim() is not { } text)
            return null;
        if (decimal.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number))
            return number;
        throw Wrong(field, text.Contains(',', StringComparison.Ordinal) ? $"'{text}' is not a number; write a decimal point, and nothing between thousands: 1234.5" : $"'{text}' is not a number; write for example 12.5");
    }

    public int? Whole(string field) => Number(field) is not { } number ? null
        : number == decimal.Truncate(number) && number is >= int.MinValue and <= int.MaxValue ? (int)number
        : throw Wrong(field, $"'{number}' is not a whole number");

    public bool? YesNo(string field) => Text(field)?.Trim().ToLowerInvariant() switch
    {
        null => null,
        "yes" or "y" or "true" or "x" => true,
        "no" or "n" or "false" => false,
        var other => throw Wrong(field, $"'{other}' is neither yes nor no"),
    };

    public BookRefusal Wrong(string field, string problem) => new($"column {map.HeaderOf(field)}: {problem}");

    /// <summary>Refuses a row that has more cells than the header has columns.</summary>
    public void CheckWidth()
    {
        if (row.Cells.Count > map.Count && row.Cells.Skip(map.Count).Any(c => !string.IsNullOrWhiteSpace(c)))
            throw new BookRefusal($"the row has {row.Cells.Count} cells where the header has {map.Count} columns; a text with a comma in it stands in \"quotes\"");
    }
}
