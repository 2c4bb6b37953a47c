namespace Stockroom.Chemistry.Tables;

/// <summary>A table that cannot be read as it stands; says in which file, line and column, and what would be right.</summary>
public sealed class TableException : Exception
{
    public TableException(string file, int line, string? column, string problem)
        : base(column is null ? $"{file}:{line}: {problem}" : $"{file}:{line}, column {column}: {problem}")
    {
        File = file;
        Line = line;
        Column = column;
        Problem = problem;
    }

    public string File { get; }

    /// <summary>1 for the header line.</summary>
    public int Line { get; }

    public string? Column { get; }

    public string Problem { get; }
}
