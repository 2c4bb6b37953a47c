using CsCheck;
using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>What a volatile cover loses by itself: with season and day, by the weighings where they tell of it, and in its words which it was.</summary>
public sealed class CoverLossTests
{
    private const double CrossSectionCm2 = 0.7853982 * 4.7 * 4.7;

    private static Situation Phosphorus(string closure = "loose cap", double millimetres = 30) => Bench.Of("phosphorus (white)", 20, "glass jar 125 mL", closure, 20, "water", millimetres);

    private static CoverForecast Of(Situation situation, DateOnly on, Length? least = null) => CoverForecast.Of(situation, Bench.Facts, on, least)!;

    private static WeighIn At(int day, double grams) => new(Bench.Day.AddDays(day), Mass.FromGrams(grams), Mass.FromGrams(0.01));

    private static double KilogramsPerSecond(Situation situation) => CoverLoss.Of(situation, Bench.Facts)!.Rate.Expected.KilogramsPerSecond;

    // Geankoplis, 3rd ed., example 6.2-2: water at 293 K under 152.4 mm of still dry air: 1.595e-4 mol/(m2 s), so 0.2488 mm of water a day.
    [Fact]
    public void Level_OfTheWaterInAnOpenTube_FallsAsPublished()
    {
        // 1 g of iron, and 10 mm of water below the mouth by 152 mm; the mouth's own resistance, a quarter of pi times 0.5 mm, is 0.39 mm.
        var tube = Bench.Of("iron", 0.001, "test tube 20 mL", "none", 19.85, "water", 10);
        var area = Math.PI / 4 * 1e-6;
        var vessel = tube.Vessel with
        {
            Bore = Length.FromMillimetres(1), NeckBore = Length.FromMillimetres(1), NeckLength = Length.FromMillimetres(1), Volume = new Volume((area * (0.010 + 0.1524 - 0.001 - 0.00039)) + (1e-6 / 7874)),
        };
        var cover = Of(tube with { Vessel = vessel, Humidity = new Fraction(0) }, Bench.Day.AddDays(10), Length.FromMillimetres(1));
        Assert.Equal(10 - (10 * 1.595e-4 * 18.015e-3 / 998.2 * 86400 * 1000), cover.Depth!.Value.Expected.Millimetres, 0.05 * 2.488);
    }

    // Day by day at the temperature of its season: what evaporates from one reading to the named day is what stood above the least depth.
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(7)]
    [InlineData(10)]
    public void FailsExpected_InASeasonalPlace_IsTheDayOfTheSeasonsOwnSum(int warmest)
    {
        var jar = Phosphorus(millimetres: 10) with { SeasonalSwing = new TemperatureChange(16), WarmestMonth = warmest };
        var steady = CoverLoss.Of(Phosphorus(millimetres: 10), Bench.Facts)!;
        var toFall = Of(jar, Bench.Day).LeastDepth!.Value.Metres * CrossSectionCm2 * 1e-4 * steady.Density.KilogramsPerCubicMetre;
        var (day, gone) = (Bench.Day, 0.0);
        while (gone < toFall)
        {
            var angle = 2 * Math.PI * (day.DayNumber - new DateOnly(2026, warmest, 16).DayNumber) / 365.25;
            gone += 86400 * KilogramsPerSecond(Phosphorus(millimetres: 10) with { Temperature = new Temperature(jar.Temperature.Kelvin + (8 * Math.Cos(angle))) });
            day = day.AddDays(1);
        }

        Assert.True(day.DayNumber - Bench.Day.DayNumber is > 20 and < 700, $"{day}");
        Assert.InRange(Of(jar, Bench.Day).FailsExpected!.Value.DayNumber - day.DayNumber, -4, 4);
    }

    // By hand: 62 mL of headspace (8/293 + 1167/98340 + 0.02) a day, 13 g/m3 above the room's own moisture: 0.018 g a year by the daily breath;
    // the gap itself passes a little more in warm afternoons.
    [Fact]
    public void Evaporation_WithADailySwing_BreathesToo()
    {
        var more = 365.25 * 86400 * 1000 * (KilogramsPerSecond(Phosphorus("cork") with { DailySwing = new TemperatureChange(8) }) - KilogramsPerSecond(Phosphorus("cork")));
        Assert.InRange(more, 0.017, 0.03);
    }

    [Fact]
    public void Dates_WarmerOrWindier_NeverLater() =>
        Gen.Select(Gen.Double[5, 25], Gen.Double[0, 8], Gen.Double[0, 8], Gen.Double[0, 16], Bench.Any("loose cap", "HDPE screw cap", "cork", "none")).Sample((celsius, warmer, day, seasons, closure) =>
        {
            var cool = Phosphorus(closure) with { Temperature = Temperature.FromCelsius(celsius), DailySwing = new TemperatureChange(day), SeasonalSwing = new TemperatureChange(seasons) };
            var (now, then) = (Of(cool, Bench.Day), Of(cool with { Temperature = Temperature.FromCelsius(celsius + warmer) }, Bench.Day));
            return Ordered(now) && Ordered(then) && (now.FailsExpected is null || then.FailsExpected!.Value.DayNumber <= now.FailsExpected.Value.DayNumber + 1);
        }, iter: 100);

    private static bool Ordered(CoverForecast c) =>
        (c.FailsExpected is null || c.FailsLow <= c.FailsExpected) && (c.FailsHigh is null || c.FailsExpected <= c.FailsHigh) && c.Depth!.Value.Low <= c.Depth.Value.Expected && c.Depth.Value.Expected <= c.Depth.Value.High;

    // A falling mass over white phosphorus is the water's: weighed three times what the physics gives, it fails by what was weighed.
    [Fact]
    public void FailsExpected_WhereTheWeighingsFollowTheCover_IsByWhatWasWeighed()
    {
        var jar = Phosphorus();
        var perDay = 3 * KilogramsPerSecond(jar) * 86400 * 1000;
        var weighed = jar with { Weighings = [At(0, 300), At(15, 300 - (15 * perDay)), At(30, 300 - (30 * perDay)), At(45, 300 - (45 * perDay))] };
        var (physics, cover) = (Of(jar, Bench.Day.AddDays(45)), Of(weighed, Bench.Day.AddDays(45)));
        var days = 1.5 * CrossSectionCm2 * 0.998 / perDay;
        Assert.InRange(cover.FailsExpected!.Value.DayNumber - Bench.Day.DayNumber, 0.93 * days, 1.07 * days);
        Assert.True(cover.FailsHigh!.Value.DayNumber - cover.FailsLow!.Value.DayNumber < 0.5 * (physics.FailsHigh!.Value.DayNumber - physics.FailsLow!.Value.DayNumber));
        Assert.Contains("by 4 weighings", cover.Because, StringComparison.Ordinal);
        Assert.Contains("by the physics", physics.Because, StringComparison.Ordinal);

        // And of the phosphorus itself nothing to speak of is gone.
        Assert.Equal(20, Forecast.Of(weighed, Bench.Facts, Bench.Day.AddDays(45)).Remaining!.Value.Expected.Grams, 0.01);
    }

    // Bromine goes too, and more than its water: a balance cannot tell them apart.
    [Fact]
    public void Words_WhereTheContentGoesToo_SayThatWeighingsDoNotTell()
    {
        var bottle = Bench.Of("bromine", 60, "ground-joint bottle 100 mL", "loose cap", 20, "water", 20) with { Weighings = [At(0, 300), At(20, 299), At(40, 298)] };
        var cover = Of(bottle, Bench.Day.AddDays(40));
        Assert.Contains("do not tell", cover.Because, StringComparison.Ordinal);
        Assert.Contains("by the physics", cover.Because, StringComparison.Ordinal);
        Assert.Equal(Of(bottle with { Weighings = [] }, Bench.Day.AddDays(40)).FailsExpected, cover.FailsExpected);
    }

    // Two depths read a week apart are worth less than four weighings; a year apart they are worth more than none.
    [Fact]
    public void Rate_OfDepthsAndWeighings_IsThatOfTheNarrowerBand()
    {
        var jar = Phosphorus();
        var perDay = KilogramsPerSecond(jar) * 86400 * 1000;
        WeighIn[] weighings = [At(0, 300), At(3, 300 - (3 * perDay)), At(6, 300 - (6 * perDay)), At(9, 300 - (9 * perDay))];
        var rough = jar with { Weighings = weighings, CoverDepths = [new(Bench.Day, Length.FromMillimetres(30)), new(Bench.Day.AddDays(9), Length.FromMillimetres(28))] };
        Assert.Contains("weighings", Of(rough, Bench.Day.AddDays(9)).Because, StringComparison.Ordinal);
        var long_ = jar with { CoverDepths = [new(Bench.Day, Length.FromMillimetres(30)), new(Bench.Day.AddDays(60), Length.FromMillimetres(28))] };
        Assert.Contains("as measured", Of(long_, Bench.Day.AddDays(60)).Because, StringComparison.Ordinal);
    }

    // The packing round the jar holds its water back as well.
    [Fact]
    public void Cover_InAFoilBag_LastsLonger()
    {
        var (bare, packed) = (Of(Phosphorus(), Bench.Day), Of(Phosphorus() with { OuterPacking = "foil bag" }, Bench.Day));
        Assert.True(packed.FailsExpected is null || packed.FailsExpected > bare.FailsExpected!.Value.AddYears(1));
    }
}
