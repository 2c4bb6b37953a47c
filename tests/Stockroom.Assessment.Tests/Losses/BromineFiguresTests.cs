using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>
/// Bromine in a bottle of 50 mm bore with a 20 mm ground joint, 2 um gap over 20 mm, 25 degrees C. Expected figures by the series
/// resistance of cover and gap, each with its own area (two-film theory), with a vapour diffusivity of 1.05e-5 m2/s; ours is the
/// handbook's 9.4e-6, so 15 per cent are allowed.
/// </summary>
public sealed class BromineFiguresTests
{
    private const double Tolerance = 0.15;

    [Theory]
    [InlineData(null, 4.5)]
    [InlineData("water", 4.45)]
    [InlineData("sulfuric acid 98%", 1.7)]
    public void Forecast_BromineBehindADryJoint_LosesAsPublished(string? cover, double gramsPerYear)
    {
        var forecast = Forecast.Of(Bench.BromineUnder(cover), Bench.Facts, Bench.Day);
        Assert.Equal(gramsPerYear, forecast.LossRate!.Value.Expected.GramsPerYear, gramsPerYear * Tolerance);
        Assert.True(forecast.LossRate!.Value.Low.GramsPerYear < gramsPerYear && gramsPerYear < forecast.LossRate!.Value.High.GramsPerYear);
    }

    // 0.5 to 3.4 g a year for 2 to 50 g/L of bromine dissolved in the acid.
    [Theory]
    [InlineData(2, 0.5)]
    [InlineData(50, 3.4)]
    public void AcidCover_OverTheRangeOfSolubility_LetsThroughAsPublished(double gramsPerLitre, double gramsPerYear)
    {
        var bare = Forecast.Of(Bench.BromineUnder(null), Bench.Facts, Bench.Day).LossRate!.Value.Expected;
        var bromine = Bench.Content("bromine").Pure!;
        var t = Temperature.FromCelsius(25);
        var gas = GasLaw.Concentration(Bench.Facts.VapourPressure(bromine, t).Value!.Value, bromine.MolarMass!.Value, t);
        var left = CoverResistance.RateLeft(
            new Diffusivity(4.5e-11), MassConcentration.FromGramsPerLitre(gramsPerLitre), Length.FromMillimetres(10), new Area(Math.PI / 4 * 0.05 * 0.05), gas, new VolumeRate(bare.KilogramsPerSecond / gas.KilogramsPerCubicMetre));
        Assert.Equal(gramsPerYear, (bare * left.Value).GramsPerYear, gramsPerYear * Tolerance);
    }

    // The 99 % suppression measured under water is for open spills: in a closed bottle water changes less than 5 %.
    [Fact]
    public void WaterCover_InAClosedBottle_ChangesLittle()
    {
        var bare = Forecast.Of(Bench.BromineUnder(null), Bench.Facts, Bench.Day).LossRate!.Value.Expected;
        var under = Forecast.Of(Bench.BromineUnder("water"), Bench.Facts, Bench.Day).LossRate!.Value.Expected;
        Assert.InRange(under / bare, 0.95, 1.0);
    }

    [Fact]
    public void AcidCover_OverAnOpenVessel_SuppressesMost()
    {
        var open = Bench.Ware.FindClosure("none")!;
        var bare = Forecast.Of(Bench.BromineUnder(null) with { Closure = open }, Bench.Facts, Bench.Day).LossRate!.Value.Expected;
        var under = Forecast.Of(Bench.BromineUnder("sulfuric acid 98%") with { Closure = open }, Bench.Facts, Bench.Day).LossRate!.Value.Expected;
        Assert.True(under / bare < 0.02);
    }
}
