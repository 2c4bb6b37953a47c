using Stockroom.Assessment.Losses;
using Stockroom.Assessment.Vessels;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>What everybody in the trade knows, each marked common practice; bands must overlap it.</summary>
public sealed class CommonPracticeTests
{
    // Common practice: no stopper keeps a volatile halogen for good.
    [Fact]
    public void Bromine_BehindAnyStopper_IsHalfGoneWithinAWorkingLife()
    {
        foreach (var closure in new[] { "ground-glass stopper, dry", "screw cap, PTFE-faced liner", "plain polypropylene screw cap" })
        {
            var half = Forecast.Of(Bench.Of("bromine", 60, "ground-joint bottle 100 mL", closure), Bench.Facts, Bench.Day).Reaches.Single(r => r.Left.Value == 0.5);
            Assert.True(half.Low < Bench.Day.AddYears(50), closure);
        }
    }

    // Common practice: a flame-sealed ampoule keeps for a century.
    [Theory]
    [InlineData("bromine")]
    [InlineData("iodine")]
    [InlineData("caesium")]
    [InlineData("argon")]
    public void FlameSealedAmpoule_LosesNothingInACentury(string content)
    {
        var forecast = Forecast.Of(Bench.Of(content, 1, "glass ampoule 10 mL", "flame seal"), Bench.Facts, Bench.Day.AddYears(100));
        Assert.Equal(1, forecast.Remaining!.Value.Low.Grams, 1e-9);
        Assert.Null(forecast.Reaches[0].Low);
    }

    // Common practice: helium leaves through the glass. Both published silica values lie in the band.
    [Fact]
    public void Helium_InSealedGlass_Leaves()
    {
        var silica = Forecast.Of(Bench.Of("helium", 0.0016, "quartz ampoule 10 mL", "flame seal"), Bench.Facts, Bench.Day);
        var borosilicate = Forecast.Of(Bench.Of("helium", 0.0016, "glass ampoule 10 mL", "flame seal"), Bench.Facts, Bench.Day);
        Assert.True(silica.LossRate!.Value.Low.KilogramsPerSecond > 0);
        Assert.True(silica.LossRate!.Value.High / silica.LossRate!.Value.Low >= 59);
        Assert.True(borosilicate.LossRate!.Value.High.KilogramsPerSecond > 0);
    }

    // Common practice: conc. sulfuric acid floats on bromine, keeps it dry, cuts the fuming of an open vessel; plastic caps fail with it.
    [Fact]
    public void Bromine_UnderConcentratedAcid_IsAsTheTradeKnows()
    {
        var bromine = Bench.Facts.Density(Bench.Content("bromine").Pure!, Temperature.FromCelsius(20)).Value!.Value;
        Assert.True(Bench.Content("sulfuric acid 98%").Density < bromine);
        Assert.Contains("dry", Bench.Ware.FindCover("sulfuric acid 98%")!.Serves, StringComparison.Ordinal);
        var open = Bench.BromineUnder(null) with { Closure = Bench.Ware.FindClosure("none")! };
        var covered = Bench.BromineUnder("sulfuric acid 98%") with { Closure = open.Closure };
        Assert.True(Forecast.Of(covered, Bench.Facts, Bench.Day).LossRate!.Value.High < Forecast.Of(open, Bench.Facts, Bench.Day).LossRate!.Value.Low);
        foreach (var plastic in (string[])["PP", "HDPE", "LDPE"])
            Assert.NotEqual(ResistanceRating.Good, VesselFit.Resists(plastic, Bench.Content("bromine"), Bench.Facts).Rating);
    }

    // Common practice: warmth multiplies the loss; 10 K more than doubles that of a volatile liquid's pressure within two such steps.
    [Fact]
    public void Warmth_MultipliesTheLoss()
    {
        var cool = Forecast.Of(Bench.BromineUnder(null) with { Temperature = Temperature.FromCelsius(10) }, Bench.Facts, Bench.Day).LossRate!.Value.Expected;
        var warm = Forecast.Of(Bench.BromineUnder(null) with { Temperature = Temperature.FromCelsius(30) }, Bench.Facts, Bench.Day).LossRate!.Value.Expected;
        Assert.True(warm / cool > 2);
    }

    // Common practice: bromine vapour is several times heavier than air (5.5 times).
    [Fact]
    public void BromineVapour_IsSeveralTimesHeavierThanAir() =>
        Assert.Equal(5.52, SubstanceFacts.Of(Bench.Content("bromine"), Temperature.FromCelsius(20), Bench.Facts).VapourDensity!.Value.Value, 0.05);

    // Common practice: ether passes a polyethylene bottle fast; a tenth of a 250 mL bottle within a year is no surprise.
    [Fact]
    public void Ether_InPolyethylene_LosesATenthWithinAYear() =>
        Assert.True(Forecast.Of(Bench.Of("diethyl ether", 170, "HDPE bottle 250 mL", "HDPE screw cap", 20), Bench.Facts, Bench.Day).Reaches[0].Expected < Bench.Day.AddYears(1));

    // Common practice: water under a good cap lasts for years.
    [Fact]
    public void Water_UnderALinedCap_LastsForYears() =>
        Assert.True(Forecast.Of(Bench.Of("water", 100, "glass reagent bottle 100 mL", "screw cap, PTFE-faced liner", 20), Bench.Facts, Bench.Day).Reaches.Single(r => r.Left.Value == 0.5).Expected is not { } d || d > Bench.Day.AddYears(3));

    // Common practice: an open dish of acetone dries within days, an open beaker of water within weeks to months.
    [Fact]
    public void OpenNeck_DriesWithinTheTimeKnown()
    {
        var acetone = Forecast.Of(Bench.Of("acetone", 10, "test tube 20 mL", "none", 20), Bench.Facts, Bench.Day).Reaches.Single(r => r.Left.Value == 0.1);
        Assert.InRange(acetone.Expected!.Value.DayNumber - Bench.Day.DayNumber, 3, 120);
    }
}
