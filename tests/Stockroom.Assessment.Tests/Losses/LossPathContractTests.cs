using Stockroom.Assessment.Losses;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>One published case of a loss path: a situation and the rate that the source gives, in g a year.</summary>
/// <param name="Source">Where the figure comes from, or common practice.</param>
public sealed record PublishedCase(Situation Situation, double GramsPerYear, double RelativeTolerance, string Source);

/// <summary>What every loss path owes: published cases, a case in which it is absent and says why, a name, and to be registered.</summary>
public abstract class LossPathContractTests
{
    protected abstract ILossPath Path { get; }

    /// <summary>At least one situation with the rate its source gives.</summary>
    protected abstract IReadOnlyList<PublishedCase> Published { get; }

    /// <summary>A situation in which nothing leaves this way.</summary>
    protected abstract Situation Absent { get; }

    protected virtual double Measured(PathForecast path) => path.Rate.Expected.GramsPerYear;

    [Fact]
    public void Path_IsRegisteredOnce() => Assert.Single(LossPaths.All, p => p.GetType() == Path.GetType());

    [Fact]
    public void Path_AbsentCase_SaysWhy()
    {
        var finding = Path.Assess(new LossState(Absent, Bench.Facts));
        Assert.Equal(PathVerdict.Absent, finding.Verdict);
        Assert.False(string.IsNullOrWhiteSpace(finding.Because));
    }

    [Fact]
    public void Path_PublishedCases_ComeOut()
    {
        Assert.NotEmpty(Published);
        foreach (var c in Published)
        {
            var path = Forecast.Of(c.Situation, Bench.Facts, Bench.Day).Paths.Single(p => p.Path == Path.Name);
            Assert.Equal(PathVerdict.Applies, path.Verdict);
            Assert.NotNull(path.Source);
            Assert.False(string.IsNullOrWhiteSpace(path.Because));
            var actual = Measured(path);
            Assert.True(Math.Abs(actual - c.GramsPerYear) <= c.RelativeTolerance * Math.Max(c.GramsPerYear, 1e-12), $"{Path.Name}: {actual:G5} where {c.GramsPerYear:G5} is published ({c.Source})");
        }
    }

    [Fact]
    public void Path_OrphanContent_IsNeverANumber()
    {
        var orphan = Absent with { Content = Chemistry.Catalogue.Content.Orphan("unknown liquid", Chemistry.Catalogue.MatterState.Liquid) };
        Assert.All(Path.Assess(new LossState(orphan, Bench.Facts)).Leaves, l => Assert.Equal(0, l.Rate.High.KilogramsPerSecond));
    }
}
