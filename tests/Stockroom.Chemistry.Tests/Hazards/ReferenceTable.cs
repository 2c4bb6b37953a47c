using System.Text.RegularExpressions;

namespace Stockroom.Chemistry.Tests.Hazards;

/// <summary>
/// CLP Annex VI Table 3 as of ATP21, kept outside the project in the folder that STOCKROOM_REFERENCE names; without it
/// the tests that need it are skipped and say so.
/// </summary>
internal static partial class ReferenceTable
{
    public sealed record Entry(string Index, string Name, IReadOnlyList<(string Category, string Statement)> Classes, IReadOnlyList<string> Pictograms, string Signal, IReadOnlyList<string> Statements, IReadOnlyList<string> Supplemental);

    public static string FolderOrSkip()
    {
        var folder = Environment.GetEnvironmentVariable("STOCKROOM_REFERENCE");
        Assert.SkipWhen(string.IsNullOrEmpty(folder), "the environment variable STOCKROOM_REFERENCE does not name the folder with CLP Annex VI Table 3");
        return Path.Combine(folder!, "ghs");
    }

    public static List<Entry> Entries(string folder) =>
        [.. Rows(Path.Combine(folder, "annex_vi_table3_atp21.tsv")).Select(r => new Entry(
            r["index_no"], r["name"], Classes(r["classification_class_h"]), r["label_pictograms"].Split(' ', StringSplitOptions.RemoveEmptyEntries),
            r["signal_word"], [.. Codes().Matches(r["label_h"]).Select(m => m.Value)], [.. Codes().Matches(r["label_euh"]).Select(m => m.Value)]))];

    public static HashSet<string> Anomalies(string folder) => [.. Rows(Path.Combine(folder, "annex_vi_anomalies.tsv")).Select(r => r["index_no"])];

    public static IEnumerable<Dictionary<string, string>> Rows(string file)
    {
        var lines = File.ReadAllLines(file);
        var header = lines[0].Split('\t');
        return lines.Skip(1).Where(l => l.Length > 0).Select(l => l.Split('\t')).Select(c => header.Zip(c).ToDictionary(p => p.First, p => p.Second));
    }

    private static List<(string Category, string Statement)> Classes(string cell) =>
        [.. Pairs().Matches(cell).Select(m => (m.Groups[1].Value.Replace("*", "", StringComparison.Ordinal).Trim(), m.Groups[2].Value))];

    [GeneratedRegex(@"(?:^|; )([^|;]+?) \| (H\d{3}[A-Za-z]*)")]
    private static partial Regex Pairs();

    [GeneratedRegex(@"E?U?H\d{3}[A-Za-z]*")]
    private static partial Regex Codes();
}
