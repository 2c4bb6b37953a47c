using Stockroom.Assessment.Neighbours;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Tests.Neighbours;

public sealed class PairJudgeTests
{
    [Fact]
    public void Judge_DangerousPairs_AreFlaggedAtTheirLevel()
    {
        Assert.True(DangerousPairs.All.Length >= 150);
        var missed = DangerousPairs.All
            .Select(p => (p.A, p.B, Needs: p.Severity == 3 ? Separation.OwnCabinet : Separation.OwnTray, Found: Profiles.Judge(p.A, p.B).Separation, p.Source))
            .Where(p => p.Found < p.Needs)
            .Select(p => $"{p.A} / {p.B}: {SeparationWords.Of(p.Found)}, needs {SeparationWords.Of(p.Needs)} by {p.Source}");
        Assert.Empty(missed);
    }

    [Fact]
    public void Judge_HarmlessPairsOfCommonStock_AreNotFlagged()
    {
        Assert.True(HarmlessPairs.All.Length >= 80);
        var flagged = HarmlessPairs.All
            .Select(p => (Pair: p, Judgement: Profiles.Judge(p.A, p.B)))
            .Where(p => p.Judgement.Separation != Separation.SameTray || p.Judgement.Vapour)
            .Select(p => $"{p.Pair.A} / {p.Pair.B}: {SeparationWords.Of(p.Judgement.Separation)}: {string.Join("; ", p.Judgement.Reasons.Select(r => r.Cause))}");
        Assert.Empty(flagged);
    }
}
