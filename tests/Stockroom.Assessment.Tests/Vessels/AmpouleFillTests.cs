using CsCheck;
using Stockroom.Assessment.Tests.Losses;
using Stockroom.Assessment.Vessels;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Vessels;

public sealed class AmpouleFillTests
{
    private static readonly Temperature Room = Temperature.FromCelsius(20);

    private static Ampoule Tube(double bore, double wall, double millilitres) => new(
        Length.FromMillimetres(bore), Length.FromMillimetres(wall), Volume.FromMillilitres(millilitres), GlassKind.Borosilicate, PhysicalConstants.StandardAtmosphere, Room);

    private static AmpouleFill Fill(string content, double grams, Ampoule ampoule, double warmest = 40) =>
        AmpouleFill.Of(Bench.Content(content), Mass.FromGrams(grams), ampoule, Room, Temperature.FromCelsius(warmest), Bench.Facts);

    // Bromine filling nine tenths at 20 degrees C is liquid-full at 378.9 K by its DIPPR 105 density; the glass gives a little more.
    [Fact]
    public void LiquidFull_BromineNineTenths_ComesOut() =>
        Assert.Equal(378.9, Fill("bromine", 0.9 * 10 * 3.1215, Tube(16, 0.8, 10)).LiquidFull!.Value.Kelvin, 378.9 * 0.004);

    // EN 1595, 12 mm by 1 mm: 12.73 bar; Lame 12.62 (lower); a third for flame-sealed ends: 4.2, a factor of 2 either way.
    [Fact]
    public void Strength_TwelveMillimetreTube_IsAThirdOfTheTable()
    {
        var strength = Tube(10, 1, 10).Strength;
        Assert.Equal(12.62 / 3, strength.Expected.Bar, 0.01);
        Assert.Equal(2, strength.High / strength.Expected, 1e-9);
        Assert.Equal(2, strength.Expected / strength.Low, 1e-9);
    }

    [Fact]
    public void Strength_SodaLime_IsLower() =>
        Assert.Equal(1.4, Tube(10, 1, 10).Strength.Expected / (Tube(10, 1, 10) with { Glass = GlassKind.SodaLime }).Strength.Expected, 1e-9);

    [Fact]
    public void Fill_AFewGramsOfBromine_IsSound()
    {
        var fill = Fill("bromine", 6, Tube(10, 1, 6), 40);
        Assert.Equal(FillVerdict.Sound, fill.Verdict);
        Assert.InRange(fill.AtWarmest!.Value.Bar, 1.4, 2.2);
    }

    // Common practice: a nearly full ampoule bursts on a warm day.
    [Fact]
    public void Fill_BromineToTheNeckInAWarmWindow_IsUnsafe()
    {
        var fill = Fill("bromine", 0.97 * 10 * 3.1215, Tube(16, 0.8, 10), 55);
        Assert.Equal(FillVerdict.Unsafe, fill.Verdict);
        Assert.Contains(fill.Because, b => b.Contains("liquid-full", StringComparison.Ordinal));
    }

    [Fact]
    public void Fill_LiquidChlorineInAThinTube_IsUnsafe() =>
        Assert.Equal(FillVerdict.Unsafe, Fill("chlorine", 5, Tube(16, 0.8, 10), 30).Verdict);

    [Fact]
    public void Fill_SulfurDioxideInAHeavyTubeFilledToTheBrim_IsUnsafeWhenWarm() =>
        Assert.Equal(FillVerdict.Unsafe, Fill("sulfur dioxide", 13.5, Tube(8, 2.5, 10), 50).Verdict);

    [Fact]
    public void Fill_ChlorineGasAtOneBar_IsSoundByTheGasLaw()
    {
        var fill = Fill("chlorine", 0.029, Tube(16, 0.8, 10), 50);
        Assert.Equal(FillVerdict.Sound, fill.Verdict);
        Assert.Equal(1.1, fill.AtWarmest!.Value.Bar, 0.05);
    }

    [Fact]
    public void Fill_GasAboveItsCriticalTemperature_IsByTheGasLaw()
    {
        // 0.5 g of argon in 10 mL: 30.5 bar at 20 degrees C by the ideal law, and 0.98 of it (second virial coefficient -16.6 cm3/mol, CRC Handbook).
        var fill = Fill("argon", 0.5, Tube(16, 0.8, 10));
        Assert.Equal(29.9, fill.AtMean!.Value.Bar, 0.2);
        Assert.Equal(FillVerdict.Unsafe, fill.Verdict);
    }

    [Theory]
    [InlineData("hydrogen peroxide 30%")]
    [InlineData("nitric acid 65%")]
    [InlineData("bleach")]
    public void Fill_ContentThatMakesGas_IsNeverSealed(string content) =>
        Assert.Equal(FillVerdict.NeverSeal, Fill(content, 1, Tube(16, 0.8, 10)).Verdict);

    [Fact]
    public void Fill_Orphan_IsNeverSealed() =>
        Assert.Equal(FillVerdict.NeverSeal, AmpouleFill.Of(Chemistry.Catalogue.Content.Orphan("?", Chemistry.Catalogue.MatterState.Liquid), Mass.FromGrams(1), Tube(16, 0.8, 10), Room, Room, Bench.Facts).Verdict);

    // Ethanol 70 per cent boils near 79 degrees C: at 40 the sum of Raoult's parts and the trapped air stay under 1.5 bar.
    [Fact]
    public void Fill_Mixture_IsTheSumOfItsParts() => Assert.InRange(Fill("ethanol 70%", 4, Tube(16, 0.8, 10)).AtWarmest!.Value.Bar, 1.15, 1.5);

    [Fact]
    public void Fill_MixtureWithoutADensity_IsNotKnown()
    {
        var content = Bench.Content("ethanol 70%") with { Density = null };
        var fill = AmpouleFill.Of(content, Mass.FromGrams(1), Tube(16, 0.8, 10), Room, Room, Bench.Facts);
        Assert.Null(fill.Verdict);
        Assert.NotEmpty(fill.Because);
    }

    [Theory]
    [InlineData("caesium")]
    [InlineData("gallium")]
    [InlineData("iodine")]
    [InlineData("copper")]
    public void Fill_SolidElement_IsSound(string element) =>
        Assert.Equal(FillVerdict.Sound, Fill(element, 1, Tube(10, 1.2, 6), 45).Verdict);

    [Fact]
    public void Fill_MoreLiquid_NeverHasMorePressureToSpare() =>
        Gen.Select(Gen.Double[0.05, 0.9], Gen.Double[0.01, 0.08], Gen.Double[25, 50]).Sample((share, more, warmest) =>
        {
            var (less, full) = (Fill("bromine", share * 31.2, Tube(16, 0.8, 10), warmest), Fill("bromine", (share + more) * 31.2, Tube(16, 0.8, 10), warmest));
            return less.AtWarmest is not { } a || full.AtWarmest is not { } b || b.Pascals >= a.Pascals * (1 - 1e-9);
        }, iter: 200);

    [Fact]
    public void Situation_NotFlameSealed_HasNoFill() => Assert.Null(AmpouleFill.Of(Bench.BromineUnder(null), Bench.Facts));

    // A gas is squeezed as any other: by the gas law half the pressure at sealing is half of the gas's share (Boyle, Mariotte), and colder gas swells more (Gay-Lussac).
    [Fact]
    public void Situation_GasAndSealingBooked_AreThoseSealedIn()
    {
        var sand = Bench.Of("silicon dioxide", 1, "glass ampoule 10 mL", "flame seal") with { Warmest = Temperature.FromCelsius(40) };
        AmpouleFill With(double bar, double celsius) => AmpouleFill.Of(sand with { SealedGas = Pressure.FromBar(bar), SealedGasAt = Temperature.FromCelsius(celsius) }, Bench.Facts)!;
        Assert.Equal(With(1, 20).AtWarmest!.Value.Bar / 2, With(0.5, 20).AtWarmest!.Value.Bar, 1e-4);
        Assert.Equal(With(1, 20).AtWarmest!.Value.Bar * 293.15 / 253.15, With(1, -20).AtWarmest!.Value.Bar, 1e-3);
        Assert.Equal(0, With(0, 20).AtWarmest!.Value.Bar, 1e-6);
        Assert.Contains(With(0, 20).Because, b => b.StartsWith("sealed under vacuum", StringComparison.Ordinal));
        Assert.DoesNotContain(With(1, 20).Because, b => b.Contains("assumed", StringComparison.Ordinal));
        Assert.Contains(AmpouleFill.Of(sand, Bench.Facts)!.Because, b => b.Contains("how it was sealed is not booked; one atmosphere and 20 degrees C assumed", StringComparison.Ordinal));
        Assert.Contains(AmpouleFill.Of(sand with { SealedGas = Pressure.FromBar(1) }, Bench.Facts)!.Because, b => b.Contains("20 degrees C assumed", StringComparison.Ordinal));
        Assert.Contains(AmpouleFill.Of(sand with { SealedGasAt = Temperature.FromCelsius(5) }, Bench.Facts)!.Because, b => b.Contains("one atmosphere assumed", StringComparison.Ordinal));
    }

    // Boiling points of nitrogen, argon and oxygen, 77, 87 and 90 K (CRC Handbook of Chemistry and Physics): at 80 K only nitrogen is still a gas.
    [Theory]
    [InlineData("argon", 80, true)]
    [InlineData("nitrogen", 80, false)]
    [InlineData("nitrogen", 77, true)]
    [InlineData(null, 80, true)]
    [InlineData("water", 80, true)]
    public void Situation_UnderAGas_SealsThatGasIn(string? cover, double kelvin, bool condenses)
    {
        var ampoule = Ampoule.Of(Bench.Of("caesium", 1, "glass ampoule 10 mL", "flame seal", 25, cover) with { SealedGasAt = new Temperature(kelvin) });
        Assert.Equal(condenses, ampoule.TrapsLiquidGas);
        Assert.Equal(cover is "argon" or "nitrogen" ? cover : "air", ampoule.GasName);
    }

    [Fact]
    public void Situation_EveryGasThatCovers_CanBeSealedIn() =>
        Assert.All(Bench.Ware.Covers.Where(c => c.Kind == CoverKind.Gas), c => Assert.Equal(c.Name, Ampoule.Of(Bench.Of("caesium", 1, "glass ampoule 10 mL", "flame seal", 25, c.Name)).GasName));

    [Theory]
    [InlineData(null, true)]
    [InlineData("argon", false)]
    public void Situation_AirOverWhatTakesUpOxygen_SaysThatThePressureMayFall(string? cover, bool said) => Assert.Equal(
        said, AmpouleFill.Of(Bench.Of("caesium", 1, "glass ampoule 10 mL", "flame seal", 25, cover), Bench.Facts)!.Because.Any(b => b.Contains("takes up the oxygen of the air", StringComparison.Ordinal)));

    [Fact]
    public void Situation_WarmestNotKnown_AssumesAndSaysSo() =>
        Assert.Contains(AmpouleFill.Of(Bench.Of("bromine", 5, "glass ampoule 10 mL", "flame seal"), Bench.Facts)!.Because, b => b.Contains("assumed", StringComparison.Ordinal));
}
