using System.Text;

namespace Stockroom.Chemistry.Tables;

/// <summary>The tables that come with the program, embedded in this assembly under their file names.</summary>
public static class EmbeddedTables
{
    /// <summary>Names of all embedded tables, such as "substances.tsv".</summary>
    public static IReadOnlyList<string> Names { get; } =
        [.. typeof(EmbeddedTables).Assembly.GetManifestResourceNames().Where(n => n.EndsWith(".tsv", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    /// <summary>The text of one embedded table.</summary>
    /// <exception cref="TableException">There is no such table.</exception>
    public static string Text(string name)
    {
        using var stream = typeof(EmbeddedTables).Assembly.GetManifestResourceStream(name)
            ?? throw new TableException(name, 1, null, "is not among the program's tables");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    /// <summary>Reads an embedded table of facts.</summary>
    public static Table Facts(string name, params ReadOnlySpan<string> columns) => TableReader.ReadFacts(name, Text(name), columns);
}
