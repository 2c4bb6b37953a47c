using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Tests.Hazards;

/// <summary>Tables of checks that come with the tests, read as strictly as the program's own.</summary>
internal static class TestTable
{
    public static Table Read(string name, params ReadOnlySpan<string> columns)
    {
        using var stream = typeof(TestTable).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        return TableReader.ReadFacts(name, reader.ReadToEnd(), columns);
    }
}
