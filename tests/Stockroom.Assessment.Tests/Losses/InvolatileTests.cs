namespace Stockroom.Assessment.Tests.Losses;

/// <summary>Which solids without a listed vapour pressure are known to stay.</summary>
public sealed class InvolatileTests
{
    private static Stockroom.Assessment.Losses.Forecast Of(string content) =>
        Stockroom.Assessment.Losses.Forecast.Of(Bench.Of(content, 10, "glass jar 60 mL", "metal screw cap, waxed card liner", 20), Bench.Facts, Bench.Day.AddYears(1));

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
}
