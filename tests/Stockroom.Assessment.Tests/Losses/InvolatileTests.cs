using Stockroom.Assessment.Losses;
using Stockroom.Assessment.Losses.Paths;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>Which solids without a listed vapour pressure are known to stay.</summary>
public sealed class InvolatileTests
{
    private static Forecast Of(string content) =>
        Forecast.Of(Bench.Of(content, 10, "glass jar 60 mL", "metal screw cap, waxed card liner", 20), Bench.Facts, Bench.Day.AddYears(1));

    // Common practice: oxides and oxygen-acid salts of metals do not evaporate on a shelf.
    [Theory]
    [InlineData("iron(III) oxide")]
    [InlineData("copper(II) sulfate pentahydrate")]
    [InlineData("lead(II) nitrate")]
    [InlineData("zinc carbonate")]
    [InlineData("silicon dioxide")]
    [InlineData("potassium chloride")]
    public void Loss_OfAnOxideOrAnOxygenAcidsSalt_IsNone(string content) => Assert.True(Of(content).LossRate is { } rate && rate.High.GramsPerYear < 1e-6, content);

    // Common practice: these sublime or smell, and the tables say nothing of how much; a guess of nothing would be false.
    [Theory]
    [InlineData("aluminium chloride")]
    [InlineData("chromium hexacarbonyl")]
    [InlineData("ruthenium tetroxide")]
    [InlineData("selenium dioxide")]
    [InlineData("mercury(II) chloride")]
    public void Loss_OfAVolatileSolidThatIsNotListed_IsUnknown(string content) => Assert.Null(Of(content).LossRate);

    private static PathLoss PastClosure(string content) => new PastClosure().Assess(new LossState(Bench.Of(content, 10, "glass jar 250 mL", "loose cap", 20), Bench.Facts));

    // Salts of the alkali and alkaline-earth metals, and of silver: common practice.
    [Theory]
    [InlineData("lithium chloride")]
    [InlineData("sodium nitrate")]
    [InlineData("potassium nitrate")]
    [InlineData("rubidium chloride")]
    [InlineData("caesium chloride")]
    [InlineData("magnesium oxide")]
    [InlineData("calcium carbonate")]
    [InlineData("strontium nitrate")]
    [InlineData("barium chloride")]
    [InlineData("radium bromide")]
    [InlineData("silver nitrate")]
    public void Salt_LosesNothingPastItsClosure(string salt)
    {
        var loss = PastClosure(salt);
        Assert.Equal(PathVerdict.Absent, loss.Verdict);
        Assert.Contains("ionic solid without a measurable vapour pressure", loss.Because, StringComparison.Ordinal);
    }

    // Others may sublime: without a figure they stay unknown, with one they are computed.
    [Theory]
    [InlineData("iodine", PathVerdict.Applies)]
    [InlineData("naphthalene", PathVerdict.Applies)]
    [InlineData("iron(III) chloride", PathVerdict.Unknown)]
    [InlineData("cobalt(II) chloride hexahydrate", PathVerdict.Unknown)]
    public void OtherSolid_IsNotTakenForOne(string content, PathVerdict verdict) => Assert.Equal(verdict, PastClosure(content).Verdict);
}
