using Stockroom.Assessment.Neighbours;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Assessment.Tests.Neighbours;

/// <summary>With the statements of the program's own classification added to what composition says.</summary>
public sealed class StatementTests
{
    private static readonly Dictionary<string, ContactProfile> Classified = new(StringComparer.Ordinal);

    [Fact]
    public void Judge_HarmlessPairsWithTheirStatements_AreNotFlagged()
    {
        var judge = new PairJudge();
        var flagged = HarmlessPairs.All
            .Select(p => (p.A, p.B, Judgement: judge.Judge(WithStatements(p.A), WithStatements(p.B))))
            .Where(p => p.Judgement.Separation != Separation.SameTray)
            .Select(p => $"{p.A} / {p.B}: {string.Join("; ", p.Judgement.Reasons.Select(r => $"{r.Cause} ({r.FamilyA}, {r.FamilyB})"))}");
        Assert.Empty(flagged);
    }

    [Fact]
    public void Judge_DangerousPairsWithTheirStatements_AreNoMilder()
    {
        var judge = new PairJudge();
        var milder = DangerousPairs.All
            .Where(p => judge.Judge(WithStatements(p.A), WithStatements(p.B)).Separation < Profiles.Judge(p.A, p.B).Separation)
            .Select(p => $"{p.A} / {p.B}");
        Assert.Empty(milder);
    }

    [Fact]
    public void Of_SubstanceOfTheTables_NeedsItsStatementsOnlyForWhatIsWrittenOfIt()
    {
        // A physical hazard in the classification that the contact tables neither carry nor put aside would be a gap in them.
        string[] byComposition = ["acid-gives-gas", "corrosive-liquid"];
        var gaps = SubstanceCatalogue.Default.Substances
            .Select(s => (s.Name, Without: Profiles.OfContent(Content.Of(s)), With: WithStatements(s.Name)))
            .Where(p => p.With.Content.Pure?.Name == p.Name)
            .SelectMany(p => p.With.Families.Where(f => !p.Without.Carries(f.Family.Key) && !byComposition.Contains(f.Family.Key)).Select(f => $"{p.Name}: {f}"))
            .ToList();
        Assert.True(gaps.Count == 0, string.Join("\n", gaps));
    }

    private static ContactProfile WithStatements(string name)
    {
        if (Classified.TryGetValue(name, out var profile))
            return profile;
        var content = SubstanceCatalogue.Default.Resolve(name).Content!;
        var codes = Classifier.Classify(content, HazardFacts.Default, RuleSet.Eu).StatementCodes;
        return Classified[name] = ContactProfile.Of(content, codes);
    }
}
