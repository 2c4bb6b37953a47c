using Stockroom.Assessment.Neighbours;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Assessment.Tests.Neighbours;

/// <summary>
/// Pairs of every kind by the names a keeper uses, judged as the verb judges them: those of further-pairs.tsv that react are kept apart at least
/// as said there, and those that do not are left alone.
/// </summary>
public sealed class FurtherPairTests
{
    private static readonly (string A, string B, Separation Needs, string Source)[] Pairs =
        [.. File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Neighbours", "further-pairs.tsv"))
            .Where(l => !l.StartsWith('#')).Skip(1).Select(l => l.Split('\t'))
            .Select(c => (c[0], c[1], (Separation)Enumerable.Range(0, 4).First(i => SeparationWords.All[i] == c[2]), c[3]))];

    [Fact]
    public void Judge_PairsThatReact_AreKeptApartAtLeastAsSaid()
    {
        var dangerous = Pairs.Where(p => p.Needs > Separation.SameTray).ToList();
        Assert.True(dangerous.Count > 350);
        Assert.Empty(dangerous.Select(p => (p, Found: Judge(p.A, p.B).Separation)).Where(p => p.Found < p.p.Needs).Select(p => $"{p.p.A} / {p.p.B}: {SeparationWords.Of(p.Found)}, needs {SeparationWords.Of(p.p.Needs)}"));
    }

    [Fact]
    public void Judge_PairsThatDoNotReact_AreLeftAlone()
    {
        var harmless = Pairs.Where(p => p.Needs == Separation.SameTray).ToList();
        Assert.True(harmless.Count > 300);
        Assert.Empty(harmless.Select(p => (p, Found: Judge(p.A, p.B))).Where(p => p.Found.Separation > Separation.SameTray || p.Found.Vapour)
            .Select(p => $"{p.p.A} / {p.p.B}: {SeparationWords.Of(p.Found.Separation)}: {string.Join("; ", p.Found.Reasons.Select(r => r.Cause))}"));
    }

    private static PairJudgement Judge(string a, string b) => new PairJudge().Judge(Profile(a), Profile(b));

    private static ContactProfile Profile(string name)
    {
        var resolution = SubstanceCatalogue.Default.Resolve(name);
        var content = resolution.Content ?? throw new ArgumentException(resolution.Problem, nameof(name));
        return ContactProfile.Of(content, Classifier.Classify(content, HazardFacts.Default, RuleSet.Eu));
    }
}
