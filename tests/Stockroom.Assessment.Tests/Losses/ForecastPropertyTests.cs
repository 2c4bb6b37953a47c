using CsCheck;
using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

public sealed class ForecastPropertyTests
{
    private static readonly Gen<(string Content, string Vessel, string Closure)> Bottles = Gen.Select(
        Bench.Any("bromine", "iodine", "acetone", "toluene", "water", "hydrochloric acid 37%", "ammonia solution 25%", "mercury", "phosphorus (white)", "diethyl ether", "ethanol 70%", "chlorine water"),
        Bench.Any("ground-joint bottle 250 mL", "HDPE bottle 250 mL", "amber glass bottle 500 mL", "glass vial 20 mL", "PP bottle 250 mL"),
        Bench.Any("ground-glass stopper, dry", "screw cap, PTFE-faced liner", "plain polypropylene screw cap", "loose cap", "none", "screw cap, polyethylene cone liner", "rubber bung"));

    private static Situation Make((string Content, string Vessel, string Closure) b, double celsius, double swing = 0) =>
        Bench.Of(b.Content, 10, b.Vessel, b.Closure, celsius) with { DailySwing = new TemperatureChange(swing) };

    [Fact]
    public void Hotter_NeverLosesLess() =>
        Gen.Select(Bottles, Gen.Double[0, 30], Gen.Double[0.1, 10], Gen.Double[0, 8]).Sample((bottle, celsius, warmer, swing) =>
        {
            var cool = Forecast.Of(Make(bottle, celsius, swing), Bench.Facts, Bench.Day);
            var warm = Forecast.Of(Make(bottle, celsius + warmer, swing), Bench.Facts, Bench.Day);
            return !warm.IsComplete || !cool.IsComplete || warm.LossRate!.Value.Expected.KilogramsPerSecond >= cool.LossRate!.Value.Expected.KilogramsPerSecond * (1 - 1e-9);
        }, iter: 200);

    [Fact]
    public void Bands_HoldTheExpected() =>
        Gen.Select(Bottles, Gen.Double[-5, 40], Gen.Double[0, 8], Gen.Int[0, 5000]).Sample((bottle, celsius, swing, days) =>
        {
            var f = Forecast.Of(Make(bottle, celsius, swing), Bench.Facts, Bench.Day.AddDays(days));
            if (f.LossRate is null)
                return f.Remaining is null && f.Reaches.Count == 0 && !f.IsComplete;
            return f.LossRate!.Value.Low <= f.LossRate!.Value.Expected && f.LossRate!.Value.Expected <= f.LossRate!.Value.High
                && f.Remaining!.Value.Low <= f.Remaining!.Value.Expected && f.Remaining!.Value.Expected <= f.Remaining!.Value.High
                && f.Remaining!.Value.Low.Kilograms >= 0 && f.Remaining!.Value.High <= Mass.FromGrams(10.0000001)
                && f.Reaches.All(r => (r.Expected is null || r.Low <= r.Expected) && (r.High is null || r.Expected <= r.High));
        }, iter: 200);

    [Fact]
    public void DoubleTheWall_HalvesPermeation() =>
        Gen.Select(Bench.Any("toluene", "acetone", "water", "diethyl ether", "chloroform", "iodine"), Bench.Any("HDPE bottle 250 mL", "LDPE bottle 250 mL", "PP bottle 250 mL"), Gen.Double[0.5, 5])
            .Sample((content, vessel, wall) =>
            {
                var one = Bench.Of(content, 50, vessel, "screw cap, PTFE-faced liner");
                one = one with { Vessel = one.Vessel with { Wall = Length.FromMillimetres(wall) } };
                var two = one with { Vessel = one.Vessel with { Wall = Length.FromMillimetres(2 * wall) } };
                return Math.Abs((Rate(one, "through the wall") / Rate(two, "through the wall")) - 2) < 1e-9;
            }, iter: 100);

    [Fact]
    public void NoDrivingForce_NoLoss()
    {
        // Water in air at 100 % relative humidity: nothing drives it out, through the gap, the wall or by breathing.
        var water = Bench.Of("water", 50, "HDPE bottle 250 mL", "loose cap") with { Humidity = new Fraction(1), DailySwing = new TemperatureChange(0) };
        Assert.Equal(0, Forecast.Of(water, Bench.Facts, Bench.Day).LossRate!.Value.High.KilogramsPerSecond, 1e-20);
    }

    [Fact]
    public void Mass_IsConservedOverForecasts()
    {
        // What has gone in a year from now and from the middle of the year agree.
        var whole = Bench.Of("acetone", 100, "ground-joint bottle 250 mL", "ground-glass stopper, dry");
        var half = Bench.Day.AddDays(180);
        var year = Bench.Day.AddDays(360);
        var atHalf = Forecast.Of(whole, Bench.Facts, half).Remaining!.Value.Expected;
        var direct = Forecast.Of(whole, Bench.Facts, year).Remaining!.Value.Expected;
        var inTwo = Forecast.Of(whole with { Amount = atHalf, AmountOn = half }, Bench.Facts, year).Remaining!.Value.Expected;
        Assert.Equal(direct.Grams, inTwo.Grams, 0.005 * 100);
    }

    private static double Rate(Situation situation, string path) =>
        Forecast.Of(situation, Bench.Facts, Bench.Day).Paths.Single(p => p.Path == path).Rate.Expected.KilogramsPerSecond;
}
