namespace Stockroom.Assessment.Neighbours.ClassTables;

/// <summary>What a class table guards against, by the classes whose rows spoke: fire spread and its fighting, leaks, poison. Common practice.</summary>
internal static class ClassConsequences
{
    public static IReadOnlyList<string> Of(string a, string b) =>
        [.. new[] { One(a), One(b) }.OfType<string>().Distinct(StringComparer.Ordinal).OrderBy(Consequences.Rank).DefaultIfEmpty("fire")];

    private static string? One(string row) => row[0] switch
    {
        '1' => row.Length > 1 && row[1] == '.' || row == "1" ? "explosion" : null,
        '2' => row.StartsWith("2.3", StringComparison.Ordinal) ? "toxic gas" : row == "2.2" ? "pressure" : "fire",
        '6' => "toxic product",
        '7' => null,
        '8' => "corrosion",
        '9' => null,
        _ => "fire",
    };
}
