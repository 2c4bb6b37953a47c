namespace Stockroom.Chemistry.Tests.Properties;

/// <summary>A folder of published check points outside the project, named by STOCKROOM_REFERENCE; absent on most machines.</summary>
internal static class ReferenceFolder
{
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows(string file)
    {
        var folder = Environment.GetEnvironmentVariable("STOCKROOM_REFERENCE");
        Assert.SkipWhen(string.IsNullOrEmpty(folder), "STOCKROOM_REFERENCE does not name a folder of published check points");
        var path = Path.Combine(folder!, "physics", file);
        Assert.True(File.Exists(path), $"{path} is missing");
        var lines = File.ReadAllLines(path).Where(l => l.Length > 0).ToList();
        var header = lines[0].Split('\t');
        return [.. lines.Skip(1).Select(l =>
        {
            var cells = l.Split('\t');
            return (IReadOnlyDictionary<string, string>)header.Zip(cells).ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal);
        })];
    }
}
