namespace Stockroom.Chemistry.Tables;

/// <summary>A table of facts as read: named columns, one row a fact, each row with its source.</summary>
public sealed class Table
{
    internal Table(string name, IReadOnlyList<string> columns, IReadOnlyList<TableRow> rows)
    {
        Name = name;
        Columns = columns;
        Rows = rows;
    }

    /// <summary>File name, as it appears in every error.</summary>
    public string Name { get; }

    public IReadOnlyList<string> Columns { get; }

    public IReadOnlyList<TableRow> Rows { get; }
}
