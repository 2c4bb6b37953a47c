using Stockroom.Assessment.Neighbours;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Tests.Neighbours;

/// <summary>
/// Against a folder of reference facts outside the project, named by STOCKROOM_REFERENCE: every pair of its list that
/// is marked as a neighbour and whose names the catalogue knows is flagged at its level.
/// </summary>
public sealed class ReferencePairTests(ITestOutputHelper output)
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
            var a = SubstanceCatalogue.Default.Resolve(Cell(cells, "substance_a")).Content;
            var b = SubstanceCatalogue.Default.Resolve(Cell(cells, "substance_b")).Content;
            if (a is null || b is null)
            {
                output.WriteLine($"not resolved: {Cell(cells, "id")} {(a is null ? Cell(cells, "substance_a") : "")} {(b is null ? Cell(cells, "substance_b") : "")}");
                continue;
            }

            judged++;
            var found = judge.Judge(ContactProfile.Of(a, []), ContactProfile.Of(b, [])).Separation;
            var needed = Cell(cells, "severity_1to3") == "3" ? Separation.OwnCabinet : Separation.OwnTray;
            if (found < needed)
                missed.Add($"{Cell(cells, "id")} {a} / {b}: {SeparationWords.Of(found)}, needs {SeparationWords.Of(needed)}");
        }

        Assert.True(judged > 100, $"only {judged} pairs could be judged");
        Assert.Empty(missed);
    }
}
