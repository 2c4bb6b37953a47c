using CsCheck;
using Stockroom.Assessment.Losses;
using Stockroom.Assessment.Losses.Ingress;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>The ways in: rates by hand, stoichiometry, and what a path that does not apply says.</summary>
public sealed class IngressTests
{
    private static IngressForecast Into(Situation situation, string gas) => IngressForecasts.Of(situation, Bench.Facts).Single(i => i.Gas == gas);

    // Transformer-oil literature: 10 mm of oil with ratio 0.12 and 1e-9 m2/s under air passes some 3 mol of oxygen a year and square metre,
    // 1.6 mmol over 5 cm2; through an open neck the oil alone governs.
    [Fact]
    public void Oxygen_ThroughOil_IsThreeMolesAYearAndSquareMetre()
    {
        var open = Bench.Of("potassium", 5, "glass jar 250 mL", "none", 25, "paraffin oil", 10);
        open = open with { Vessel = open.Vessel with { NeckBore = open.Vessel.Bore, NeckLength = Length.FromMillimetres(1) } };
        var rate = Into(open, "oxygen").Rate!.Value.Expected;
        var molesPerSquareMetre = rate.GramsPerYear / 32.0 / open.Vessel.CrossSection.SquareMetres;
        Assert.Equal(3.25, molesPerSquareMetre, 0.1);
    }

    // By hand, humid air of 50 % at 25 degrees C holds 11.5 g/m3; a gap of 2 um round 14 mm over 20 mm: D 2.5e-5 x 8.8e-8 m2/0.02 m.
    [Fact]
    public void Water_PastAGroundJoint_ComesOutByHand()
    {
        var jar = Bench.Of("calcium chloride", 50, "ground-joint bottle 100 mL", "ground-glass stopper, dry", 25);
        var rate = Into(jar, "water").Rate!.Value.Expected.GramsPerYear;
        var d = Bench.Facts.DiffusivityInAir(Bench.Facts.Catalogue["water"], Temperature.FromCelsius(25)).Value!.Value.SquareMetresPerSecond;
        var neck = jar.Vessel.NeckBore.Metres;
        Assert.Equal(d * Math.PI * neck * 2e-6 / 0.02 * 11.5 * 31_557_600, rate, rate * 0.05);
    }

    // 10 g of sodium is 0.435 mol, 0.109 mol of oxygen to the oxide: 3.48 g; one per cent of it is 35 mg.
    [Fact]
    public void Spoiled_Sodium_IsWhenOnePerCentIsOxide()
    {
        var sodium = Bench.Of("sodium", 10, "glass reagent bottle 100 mL", "screw cap, PTFE-faced liner", 20, "paraffin oil", 10);
        var oxygen = Into(sodium, "oxygen");
        var days = 0.0348 / oxygen.Rate!.Value.Expected.GramsPerYear * 365.25;
        Assert.Equal(days, oxygen.SpoiledExpected!.Value.DayNumber - Bench.Day.DayNumber, Math.Max(2, days * 0.01));
        Assert.True(oxygen.SpoiledLow <= oxygen.SpoiledExpected);
    }

    [Fact]
    public void Acid_CoverTakesTheWater_AndIsSpentOnADay()
    {
        var water = Into(Bench.BromineUnder("sulfuric acid 98%"), "water");
        Assert.Equal(PathVerdict.Applies, water.Verdict);
        Assert.Contains("acid cover takes it up", water.Because, StringComparison.Ordinal);
        Assert.NotNull(water.SpoiledLow);
    }

    [Theory]
    [InlineData("sodium", "glass ampoule 10 mL", "flame seal")]
    [InlineData("copper", "glass vial 20 mL", "screw cap, PTFE-faced liner")]
    public void Path_ThatDoesNotApply_SaysWhy(string content, string vessel, string closure)
    {
        Assert.All(IngressForecasts.Of(Bench.Of(content, 1, vessel, closure), Bench.Facts), i =>
        {
            Assert.Equal(PathVerdict.Absent, i.Verdict);
            Assert.Null(i.Rate);
            Assert.False(string.IsNullOrWhiteSpace(i.Because));
        });
    }

    [Fact]
    public void Phosphorus_UnderWater_TakesOxygenThroughTheWaterAndNoMoisture()
    {
        var jar = Bench.Of("phosphorus (white)", 20, "glass reagent bottle 250 mL", "screw cap, PTFE-faced liner", 20, "water", 40);
        Assert.Equal(PathVerdict.Applies, Into(jar, "oxygen").Verdict);
        Assert.Equal(PathVerdict.Absent, Into(jar, "water").Verdict);
    }

    [Fact]
    public void Rate_DeeperOilOrDrierAir_IsNeverMore() =>
        Gen.Select(Bench.Any("sodium", "potassium", "calcium"), Gen.Double[2, 40], Gen.Double[1, 20], Gen.Double[0.1, 0.9]).Sample((content, mm, more, humid) =>
        {
            double Rate(double depth, double humidity, string gas) => Into(
                Bench.Of(content, 5, "glass reagent bottle 250 mL", "loose cap", 20, "paraffin oil", depth) with { Humidity = new Fraction(humidity) }, gas).Rate!.Value.Expected.KilogramsPerSecond;
            return Rate(mm + more, 0.5, "oxygen") <= Rate(mm, 0.5, "oxygen") && Rate(mm, humid / 2, "water") <= Rate(mm, humid, "water");
        }, iter: 60);

    [Fact]
    public void Rate_NoHumidity_NoMoisture() =>
        Assert.Equal(0, Into(Bench.Of("calcium chloride", 50, "HDPE bottle 125 mL", "HDPE screw cap") with { Humidity = new Fraction(0) }, "water").Rate!.Value.High.KilogramsPerSecond);
}
