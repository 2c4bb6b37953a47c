using Stockroom.Assessment.Losses;

namespace Stockroom.Assessment.Tests.Losses;

public sealed class LossExplanationTests
{
    [Fact]
    public void Equations_EveryPath_HasOne() => Assert.All(LossPaths.All, p => Assert.False(string.IsNullOrWhiteSpace(LossEquations.Of(p)), p.Name));

    // Leaks in parallel behind the cover in series give the total: vapour/(R(cover) + 1/sum(1/R)).
    [Theory]
    [InlineData(null)]
    [InlineData("water")]
    [InlineData("sulfuric acid 98%")]
    public void Network_OfTheResistances_GivesTheTotal(string? cover)
    {
        var situation = Bench.BromineUnder(cover) with { DailySwing = new Chemistry.Quantities.TemperatureChange(4) };
        var explained = LossExplanation.Of(situation, Bench.Facts);
        var leaks = explained.Paths.Where(p => p.Joined == "in parallel" && p.Resistance is not null).Sum(p => 1 / p.Resistance!.Value.SecondsPerCubicMetre);
        var series = explained.Paths.Where(p => p.Joined == "in series").Sum(p => p.Resistance!.Value.SecondsPerCubicMetre);
        var rate = explained.Vapour!.Value.KilogramsPerCubicMetre / (series + (1 / leaks));
        Assert.Equal(explained.Total.Expected.KilogramsPerSecond, rate, rate * 1e-6);
        Assert.Equal(cover is null ? 0 : 1, explained.Paths.Count(p => p.Joined == "in series"));
        Assert.All(explained.Paths, p => Assert.False(string.IsNullOrWhiteSpace(p.Because)));
    }
}
