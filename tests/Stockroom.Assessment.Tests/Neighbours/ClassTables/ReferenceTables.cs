namespace Stockroom.Assessment.Tests.Neighbours.ClassTables;

/// <summary>Tables of reference facts outside the project, in the folder that STOCKROOM_REFERENCE names; without it the test is skipped.</summary>
internal static class ReferenceTables
{
    private const string Variable = "STOCKROOM_REFERENCE";

    /// <summary>Rows of a file of the folder's "segregation", cells by column; "-" stands for an empty cell.</summary>
    public static List<Dictionary<string, string>> Read(string file)
    {
        var folder = Environment.GetEnvironmentVariable(Variable);
        Assert.SkipWhen(string.IsNullOrEmpty(folder), $"{Variable} does not name a folder that holds segregation/{file}");
        var lines = File.ReadAllLines(Path.Combine(folder!, "segregation", file));
        var columns = lines[0].Split('\t');
        return [.. lines.Skip(1).Where(l => l.Length > 0).Select(l => columns.Zip(l.Split('\t')).ToDictionary(c => c.First, c => c.Second, StringComparer.Ordinal))];
    }
}
