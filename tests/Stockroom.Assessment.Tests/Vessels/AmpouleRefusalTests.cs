using Stockroom.Assessment.Tests.Losses;
using Stockroom.Assessment.Vessels;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Vessels;

/// <summary>What a sealed tube must not be called sound for, and what it must be.</summary>
public sealed class AmpouleRefusalTests
{
    private static AmpouleFill Judge(string content, double grams, double at = 20, double warmest = 40, double coldest = 5) => AmpouleFill.Of(
        new AmpouleQuestion
        {
            Content = Bench.Content(content),
            Fill = Mass.FromGrams(grams),
            Ampoule = Ampoule.OfTube(Length.FromMillimetres(10), Length.FromMillimetres(2), Length.FromMillimetres(100), GlassKind.Borosilicate, PhysicalConstants.StandardAtmosphere, Temperature.FromCelsius(20)),
            At = Temperature.FromCelsius(at),
            Warmest = Temperature.FromCelsius(warmest),
            Coldest = Temperature.FromCelsius(coldest),
        },
        Bench.Facts);

    // Common practice: hydrogen fluoride and the fluorides of the halogens are never kept in glass; the rest from memory of Bretherick's Handbook.
    [Theory]
    [InlineData("hydrogen fluoride")]
    [InlineData("hydrofluoric acid 40%")]
    [InlineData("chlorine trifluoride")]
    [InlineData("bromine pentafluoride")]
    [InlineData("ozone")]
    [InlineData("hydrogen cyanide")]
    [InlineData("acetylene")]
    public void Seal_WhatAttacksGlassOrGoesOffByItself_IsNeverSealed(string content)
    {
        var fill = Judge(content, 0.1);
        Assert.Equal(FillVerdict.NeverSeal, fill.Verdict);
        Assert.NotEmpty(fill.Because[0]);
    }

    // Phosgene's liquid weighs 1.38 g/mL at 20 degrees C (CRC Handbook, from memory): 12 g do not go into 7.9 mL. No density of it is in the tables.
    [Fact]
    public void Seal_ALiquidWithoutADensity_IsJudgedOnlyWhereItSurelyHasRoom()
    {
        var much = Judge("phosgene", 12);
        Assert.Null(much.Verdict);
        Assert.Contains("density", much.Because[0], StringComparison.Ordinal);
        Assert.NotNull(Judge("phosgene", 1).Verdict);
    }

    // Of a solid, what went in has room: 3 g of permanganate (2.7 g/mL, CRC Handbook, from memory) in 7.9 mL.
    [Fact]
    public void Seal_ASolidWithoutADensity_IsJudged() => Assert.Equal(FillVerdict.Sound, Judge("potassium permanganate", 3).Verdict);

    // Hydrogen chloride, 76 g/L at 30 degrees C: saturated vapour holds more than 100 g/L there (NIST WebBook, from memory), so it is a gas, and below
    // saturation; hotter, its pressure is higher.
    [Fact]
    public void Pressure_OfADenseVapour_IsBelowSaturationAndRisesWithHeat()
    {
        var fill = Judge("hydrogen chloride", 0.6, at: 30, warmest: 80);
        var saturation = Bench.Facts.VapourPressure(Bench.Content("hydrogen chloride").Pure!, Temperature.FromCelsius(30)).Value!.Value;
        Assert.True(fill.AtMean < saturation && fill.AtWarmest > fill.AtMean);
    }

    // Heavy ice is lighter than heavy water, as ice is: 1018 against 1105 kg/m3 at 3.8 degrees C (from memory).
    [Fact]
    public void Frost_HeavyWater_NeedsRoom() => Assert.Equal(FillVerdict.Unsafe, Judge("heavy water", 8.4, coldest: -10).Verdict);

    // Benzene frozen when it was sealed: its solid takes no more room than its liquid, so the air above is not thinned as it melts.
    [Fact]
    public void Pressure_OfWhatWasSealedFrozen_IsNotTheLessForIt()
    {
        var rho = Bench.Facts.LiquidDensity(Bench.Content("benzene").Pure!, Temperature.FromCelsius(6)).Value!.Value;
        var grams = 0.85 * 7.853981634 * rho.GramsPerMillilitre;
        Ampoule Sealed(double celsius) => Ampoule.OfTube(
            Length.FromMillimetres(10), Length.FromMillimetres(2), Length.FromMillimetres(100), GlassKind.Borosilicate, PhysicalConstants.StandardAtmosphere, Temperature.FromCelsius(celsius));
        AmpouleFill At(double celsius) => AmpouleFill.Of(
            new AmpouleQuestion { Content = Bench.Content("benzene"), Fill = Mass.FromGrams(grams), Ampoule = Sealed(celsius), At = Temperature.FromCelsius(20), Warmest = Temperature.FromCelsius(40) }, Bench.Facts);
        Assert.InRange(At(0).AtWarmest!.Value.Bar / At(6).AtWarmest!.Value.Bar, 1.0, 1.05);
    }

    // A forecast of what stands sealed and must not says so.
    [Fact]
    public void Forecast_OfPeroxideInAFlameSealedAmpoule_Warns()
    {
        var forecast = Stockroom.Assessment.Losses.Forecast.Of(Bench.Of("hydrogen peroxide 30%", 2, "glass ampoule 5 mL", "flame seal", 20), Bench.Facts, Bench.Day.AddYears(1));
        Assert.Contains(forecast.Warnings, w => w.Contains("never seal", StringComparison.Ordinal));
    }
}
