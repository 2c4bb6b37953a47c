using System.Text.RegularExpressions;
using Stockroom.Assessment.Neighbours;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Tests.Neighbours;

/// <summary>
/// Against a folder of reference facts outside the project, named by STOCKROOM_REFERENCE: every pair of its list that
/// is marked as a neighbour and whose names the catalogue knows is flagged at its level.
/// </summary>
public sealed partial class ReferencePairTests(ITestOutputHelper output)
{
    private const string Variable = "STOCKROOM_REFERENCE";

    [Fact]
    public void Judge_EveryReferenceNeighbourPairThatResolves_IsFlaggedAtItsLevel()
    {
        var folder = Environment.GetEnvironmentVariable(Variable);
        Assert.SkipWhen(string.IsNullOrEmpty(folder), $"{Variable} does not name a folder that holds segregation/incompatible_pairs.tsv");
        var lines = File.ReadAllLines(Path.Combine(folder!, "segregation", "incompatible_pairs.tsv"));
        var columns = lines[0].Split('\t').ToList();
        string Cell(string[] cells, string column) => cells[columns.IndexOf(column)];
        var judge = new PairJudge();
        var missed = new List<string>();
        var judged = 0;
        foreach (var cells in lines.Skip(1).Select(l => l.Split('\t')).Where(c => Cell(c, "kind") == "neighbour"))
        {
            var needed = Cell(cells, "severity_1to3") == "3" ? Separation.OwnCabinet : Separation.OwnTray;
            var firsts = Readings(Cell(cells, "substance_a"));
            var seconds = Readings(Cell(cells, "substance_b"));
            if (firsts.Count == 0 || seconds.Count == 0)
                output.WriteLine($"not resolved: {Cell(cells, "id")} {Cell(cells, "substance_a")} / {Cell(cells, "substance_b")}");
            else
                judged++;
            foreach (var (a, b) in firsts.SelectMany(a => seconds.Select(b => (a, b))))
            {
                var found = judge.Judge(ContactProfile.Of(a, []), ContactProfile.Of(b, [])).Separation;
                if (found < needed)
                    missed.Add($"{Cell(cells, "id")} {a} / {b}: {SeparationWords.Of(found)}, needs {SeparationWords.Of(needed)}");
            }
        }

        Assert.True(judged > 170, $"only {judged} pairs could be judged");
        Assert.Empty(missed);
    }

    // The list writes "silver nitrate / silver oxide" for either, "tungsten / titanium powder" for two powders, "aluminium
    // powder / water" for the powder when wet, and "zinc dust (damp)" for a state that a name cannot tell.
    private static List<Content> Readings(string words)
    {
        var whole = SubstanceCatalogue.Default.Resolve(words).Content;
        if (whole is not null)
            return [whole];
        var readings = Bracket().Replace(words, "").Split('/', StringSplitOptions.TrimEntries);
        var powder = readings[^1].EndsWith(" powder", StringComparison.Ordinal) ? " powder" : "";
        return [.. readings
            .Where(w => w != "water")
            .Select(w => w.EndsWith(powder, StringComparison.Ordinal) ? w : w + powder)
            .Select(w => SubstanceCatalogue.Default.Resolve(w).Content)
            .OfType<Content>()];
    }

    [GeneratedRegex(@"\s*\([^)]*\)")]
    private static partial Regex Bracket();
}
