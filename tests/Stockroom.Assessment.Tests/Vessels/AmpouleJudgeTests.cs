using CsCheck;
using Stockroom.Assessment.Tests.Losses;
using Stockroom.Assessment.Vessels;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Vessels;

public sealed class AmpouleJudgeTests
{
    private static AmpouleQuestion Ask(string content, double share, double bore = 10, double wall = 1, double length = 100) => With(Bench.Content(content), Tube(bore, wall, length), share);

    private static Ampoule Tube(double bore, double wall, double length) => Ampoule.OfTube(
        Length.FromMillimetres(bore), Length.FromMillimetres(wall), Length.FromMillimetres(length), GlassKind.Borosilicate, PhysicalConstants.StandardAtmosphere, Temperature.FromCelsius(20));

    private static AmpouleQuestion With(Chemistry.Catalogue.Content content, Ampoule ampoule, double share)
    {
        var rho = content.Density ?? Bench.Facts.LiquidDensity(content.Pure!, Temperature.FromCelsius(20)).Value ?? Bench.Facts.SolidDensity(content.Pure!).Value ?? new Density(1000);
        return new AmpouleQuestion { Content = content, Ampoule = ampoule, Fill = new Mass(share * ampoule.Volume.CubicMetres * rho.KilogramsPerCubicMetre) };
    }

    private static AmpouleFill Judge(AmpouleQuestion question) => AmpouleFill.Of(question, Bench.Facts);

    [Fact]
    public void Volume_BoreAndLength_IsTheCylinder() => Assert.Equal(Math.PI / 4 * 10, Tube(10, 1, 100).Volume.Millilitres * 10 / 7.853981634 * Math.PI / 4, 1e-6);

    // Every listed tube: EN 1595 by the formula in glass makers' data; the sound strength is a third of the lower of the two laws.
    [Theory]
    [InlineData(5, 0.8, 25.73)]
    [InlineData(10, 1.0, 15.37)]
    [InlineData(16, 1.8, 17.47)]
    [InlineData(20, 2.5, 19.60)]
    [InlineData(30, 1.4, 6.84)]
    public void Strength_ListedTube_IsAThirdOfLame(double outside, double wall, double lameBar) =>
        Assert.Equal(lameBar / 3, Tube(outside - (2 * wall), wall, 100).Strength.Expected.Bar, lameBar / 3 * 0.002);

    [Fact]
    public void WallFor_AStrength_GivesThatStrength()
    {
        var tube = Tube(8, 1, 50);
        var wall = tube.WallFor(Pressure.FromBar(6))!.Value;
        Assert.InRange((tube with { Wall = wall }).Strength.Expected.Bar, 5.4, 6.1);
        Assert.Null(tube.WallFor(Pressure.FromBar(60)));
    }

    [Fact]
    public void Pressure_AboveTheCriticalTemperature_IsByTheGasLawAndSaysItsCompressibility()
    {
        var fill = Judge(Ask("carbon dioxide", 1) with { Fill = Mass.FromGrams(0.2 * 7.853981634) });
        Assert.Equal(FillVerdict.Unsafe, fill.Verdict);
        Assert.Null(fill.LiquidFull);
        Assert.InRange(fill.AtWarmest!.Value.Bar, 67, 74); // NIST WebBook, from memory: 198 kg/m3 at 313.15 K and 70 bar
        Assert.Contains(fill.Because, b => b.Contains("compressibility of 0.", StringComparison.Ordinal) && b.Contains("critical", StringComparison.Ordinal));
    }

    // Water swells by 9.1 per cent as it freezes: 95 per cent full and frozen is over-full, 85 per cent is not.
    [Theory]
    [InlineData(0.95, FillVerdict.Unsafe)]
    [InlineData(0.85, FillVerdict.Marginal)]
    public void Frost_WaterInAColdShed_NeedsRoom(double share, FillVerdict verdict)
    {
        var fill = Judge(Ask("water", share) with { Coldest = Temperature.FromCelsius(-10) });
        Assert.Equal(verdict, fill.Verdict);
        Assert.Contains(fill.Because, b => b.Contains("freezes", StringComparison.Ordinal));

        // No other fill and no thicker wall would do, only a warmer place; there UN P200's 0.95 times the density at 50 degrees C is the most.
        Assert.Null(fill.SoundFill);
        Assert.StartsWith($"no fill of it is sound where it freezes; where it never does, {(share > 0.94 ? "at most 7.3" : "this one would be")}", fill.Because[^1], StringComparison.Ordinal);
        Assert.DoesNotContain(fill.Because, b => b.Contains("wall of", StringComparison.Ordinal));
    }

    // Gallium melted in at 40 degrees C to 98.5 per cent holds no room for the 3.2 per cent it gains on freezing at 29.8.
    [Fact]
    public void Frost_GalliumFilledMolten_BurstsOnFreezing()
    {
        var tube = Tube(10, 1, 60);
        var molten = Bench.Facts.LiquidDensity(Bench.Facts.Catalogue["gallium"], Temperature.FromCelsius(40)).Value!.Value;
        AmpouleFill Filled(double share) => Judge(new AmpouleQuestion
        {
            Content = Bench.Content("gallium"), Ampoule = tube, Fill = new Mass(share * tube.Volume.CubicMetres * molten.KilogramsPerCubicMetre), At = Temperature.FromCelsius(40), Warmest = Temperature.FromCelsius(45),
        });
        Assert.Equal(FillVerdict.Unsafe, Filled(0.985).Verdict);
        Assert.NotEqual(FillVerdict.Unsafe, Filled(0.9).Verdict);
    }

    [Theory]
    [InlineData("potassium")]
    [InlineData("radium bromide")]
    [InlineData("sodium")]
    public void Damp_WhatMakesGasWithWater_IsNeverSealed(string content) =>
        Assert.Equal(FillVerdict.NeverSeal, Judge(Ask(content, 0.3) with { Damp = true }).Verdict);

    [Theory]
    [InlineData("nitric acid 65%")]
    [InlineData("nitric acid 90%")]
    [InlineData("hydrogen peroxide 3%")]
    [InlineData("sodium hypochlorite 12%")]
    [InlineData("formic acid")]
    [InlineData("benzoyl peroxide")]
    public void GasMakers_AsTheyStand_AreNeverSealed(string content) => Assert.Equal(FillVerdict.NeverSeal, Judge(Ask(content, 0.3)).Verdict);

    [Fact]
    public void Helium_RadiumOverFiftyYears_AddsPressureThatADaysDoesNot()
    {
        var question = new AmpouleQuestion { Content = Bench.Content("radium bromide"), Ampoule = Tube(6, 1, 50), Fill = Mass.FromGrams(1) };
        var (day, years) = (Judge(question with { Kept = Span.FromDays(1) }).AtWarmest!.Value, Judge(question).AtWarmest!.Value);

        // 0.586 g of radium: 0.17 cm3 a year and gram with four alphas, more as polonium grows in; in 1.2 mL of room, warm.
        Assert.InRange((years - day).Bar, 50 * 0.586 * 0.17 / 1.25 * 0.98, 50 * 0.586 * 0.17 / 1.2 * 1.4);
    }

    [Fact]
    public void Gas_SealedHot_LeavesLessThanSealedCold()
    {
        AmpouleFill With(double celsius) => Judge(Ask("bromine", 0.5) with { Ampoule = Tube(10, 1, 100) with { SealedAt = Temperature.FromCelsius(celsius) } });
        Assert.True(With(150).AtWarmest < With(20).AtWarmest);
    }

    [Fact]
    public void Gas_Vacuum_LeavesTheVapourAlone()
    {
        var tube = Tube(10, 1, 100) with { SealedPressure = default, Gas = TrappedGas.Vacuum };
        var fill = Judge(With(Bench.Content("bromine"), tube, 0.5));
        Assert.Equal(Bench.Facts.VapourPressure(Bench.Facts.Catalogue["bromine"], Temperature.FromCelsius(40)).Value!.Value.Bar, fill.AtWarmest!.Value.Bar, 1e-9);
    }

    [Fact]
    public void Gas_SealedInLiquidNitrogen_IsUnsafe() =>
        Assert.Equal(FillVerdict.Unsafe, Judge(Ask("bromine", 0.3) with { Ampoule = Tube(10, 1, 100) with { SealedAt = Temperature.FromCelsius(-196) } }).Verdict);

    [Theory]
    [InlineData("bromine", 0.97)]
    [InlineData("bromine", 0.95)]
    [InlineData("sulfur dioxide", 0.6)]
    [InlineData("diethyl ether", 0.97)]
    [InlineData("water", 0.95)]
    public void SoundFill_OfAnUnsoundOne_IsSoundAndNearlyTheMost(string content, double share)
    {
        var question = Ask(content, share);
        var fill = Judge(question);
        Assert.NotEqual(FillVerdict.Sound, fill.Verdict);
        Assert.Equal(FillVerdict.Sound, Judge(question with { Fill = fill.SoundFill!.Value }).Verdict);
        Assert.NotEqual(FillVerdict.Sound, Judge(question with { Fill = fill.SoundFill!.Value * 1.01 }).Verdict);
        Assert.Contains(fill.Because, b => b.Contains("at most", StringComparison.Ordinal));
    }

    [Fact]
    public void SoundFill_WhereNoneIs_SaysSo() =>
        Assert.Contains(Judge(Ask("ammonia", 0.5, bore: 30, wall: 0.3)).Because, b => b.Contains("at most", StringComparison.Ordinal) || b.Contains("no fill", StringComparison.Ordinal));

    [Fact]
    public void Verdict_Warmer_IsNeverBetter() =>
        Gen.Select(Bench.Any("bromine", "diethyl ether", "water", "sulfur dioxide", "acetone", "ammonia solution 25%", "mercury"), Gen.Double[0.05, 0.99], Gen.Double[25, 80], Gen.Double[0, 30]).Sample((content, share, warm, more) =>
        {
            var question = Ask(content, share);
            var (cool, hot) = (Judge(question with { Warmest = Temperature.FromCelsius(warm) }), Judge(question with { Warmest = Temperature.FromCelsius(warm + more) }));
            return cool.Verdict is not { } a || hot.Verdict is not { } b || b >= a;
        }, iter: 150);

    [Fact]
    public void Verdict_ThickerWall_IsNeverWorse() =>
        Gen.Select(Bench.Any("bromine", "diethyl ether", "sulfur dioxide", "ammonia"), Gen.Double[0.05, 0.9], Gen.Double[0.5, 2], Gen.Double[0, 2]).Sample((content, share, wall, more) =>
            Judge(Ask(content, share, wall: wall + more)).Verdict <= Judge(Ask(content, share, wall: wall)).Verdict, iter: 150);
}
