namespace Stockroom.Chemistry.Tables;

/// <summary>
/// Reads a table strictly. A table is UTF-8 text, columns parted by tabs, the first line naming them (lower case,
/// words joined by underscores), '#' at the start of a line a comment, an empty cell nothing stated.
/// </summary>
public static class TableReader
{
    /// <summary>The columns that say where a fact comes from; they close every table of facts.</summary>
    public static readonly IReadOnlyList<string> ProvenanceColumns = ["source", "locator", "as_of"];

    /// <summary>Reads a table of facts: every row must carry its source.</summary>
    /// <exception cref="TableException">The text breaks the format, lacks a column, or a row lacks its source.</exception>
    public static Table ReadFacts(string name, string text, params ReadOnlySpan<string> columns) =>
        Read(name, text, columns, withProvenance: true);

    /// <summary>Reads a table that a keeper wrote (a collection, an import), in which a source column is not asked for and cells missing at the end of a row are empty.</summary>
    /// <exception cref="TableException">The text breaks the format or lacks a column.</exception>
    public static Table ReadPlain(string name, string text, params ReadOnlySpan<string> columns) =>
        Read(name, text, columns, withProvenance: false);

    private static Table Read(string name, string text, ReadOnlySpan<string> columns, bool withProvenance)
    {
        if (text.Length > 0 && text[0] == '\uFEFF')
            text = text[1..];
        var lines = text.Split('\n');
        List<string>? header = null;
        var rows = new List<TableRow>();
        for (var i = 0; i < lines.Length; i++)
        {
            var line = lines[i].TrimEnd('\r');
            if (line.Length == 0 || line[0] == '#')
                continue;
            RefuseControlCharacters(name, i + 1, line);
            var cells = line.Split('\t');
            if (header is null)
            {
                header = ReadHeader(name, i + 1, cells, columns, withProvenance);
                continue;
            }

            if (!withProvenance && cells.Length < header.Count)
                cells = [.. cells, .. Enumerable.Repeat("", header.Count - cells.Length)];
            if (cells.Length != header.Count)
                throw new TableException(name, i + 1, null, $"has {cells.Length} cells where the header has {header.Count} columns");
            var row = new TableRow(name, i + 1, header, cells);
            if (withProvenance)
                _ = row.Provenance;
            rows.Add(row);
        }

        return header is null
            ? throw new TableException(name, 1, null, "is empty; a header line is needed")
            : new Table(name, header, rows);
    }

    private static List<string> ReadHeader(string name, int line, string[] cells, ReadOnlySpan<string> columns, bool withProvenance)
    {
        var header = new List<string>(cells.Length);
        foreach (var cell in cells)
        {
            if (cell.Length == 0 || cell.Any(c => !(char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '_')))
                throw new TableException(name, line, cell, "a column name is lower-case letters, digits and underscores");
            if (header.Contains(cell))
                throw new TableException(name, line, cell, "stands twice in the header");
            header.Add(cell);
        }

        foreach (var column in columns)
        {
            if (!header.Contains(column))
                throw new TableException(name, line, column, "is missing from the header");
        }

        foreach (var column in header)
        {
            if (!columns.Contains(column) && !(withProvenance && ProvenanceColumns.Contains(column)))
                throw new TableException(name, line, column, $"is not a column of this table; known are {string.Join(", ", columns.ToArray())}");
        }

        if (withProvenance && !header.TakeLast(3).SequenceEqual(ProvenanceColumns))
            throw new TableException(name, line, null, "must end in the columns source, locator, as_of");
        return header;
    }

    private static void RefuseControlCharacters(string name, int line, string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsControl(text[i]) && text[i] != '\t')
                throw new TableException(name, line, null, $"holds the control character U+{(int)text[i]:X4} at character {i + 1}");
        }
    }
}
