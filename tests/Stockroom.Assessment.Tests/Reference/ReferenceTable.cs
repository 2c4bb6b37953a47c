namespace Stockroom.Assessment.Tests.Reference;

/// <summary>Tables of a folder of published figures outside the project, named by STOCKROOM_REFERENCE; absent on most machines.</summary>
internal static class ReferenceTable
{
    public static string Folder
    {
        get
        {
            var folder = Environment.GetEnvironmentVariable("STOCKROOM_REFERENCE");
            Assert.SkipWhen(string.IsNullOrEmpty(folder), "STOCKROOM_REFERENCE does not name a folder of published figures");
            return Path.Combine(folder!, "physics");
        }
    }

    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(Folder, file)).Where(l => l.Length > 0).ToList();
        var header = lines[0].Split('\t');
        return [.. lines.Skip(1).Select(l => (IReadOnlyDictionary<string, string>)header.Zip(l.Split('\t')).ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal))];
    }
}
