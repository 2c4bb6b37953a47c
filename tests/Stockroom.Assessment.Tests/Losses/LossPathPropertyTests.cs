using CsCheck;
using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>What holds of each way out, whatever is in the vessel.</summary>
public sealed class LossPathPropertyTests
{
    private static readonly Gen<Situation> Bottles = Gen.Select(
        Bench.Any("bromine", "iodine", "acetone", "toluene", "water", "hydrochloric acid 37%", "ammonia solution 25%", "diethyl ether", "ethanol 70%", "radium", "helium", "hydrogen peroxide 30%"),
        Bench.Any("ground-joint bottle 250 mL", "HDPE bottle 250 mL", "glass vial 20 mL", "quartz ampoule 10 mL"),
        Bench.Any("ground-glass stopper, dry", "screw cap, PTFE-faced liner", "loose cap", "none", "rubber bung", "flame seal"),
        Gen.Double[5, 25],
        Gen.Double[0, 6]).Select((content, vessel, closure, celsius, swing) =>
            Bench.Of(content, 5, vessel, closure, celsius) with { DailySwing = new TemperatureChange(swing), SeasonalSwing = new TemperatureChange(swing) });

    private static Dictionary<string, PathForecast> Paths(Situation s) => Forecast.Of(s, Bench.Facts, Bench.Day).Paths.ToDictionary(p => p.Path);

    private static double Rate(Situation s, string path) => Paths(s)[path].Rate.Expected.KilogramsPerSecond;

    [Fact]
    public void EachPath_Hotter_NeverLosesLess() =>
        Gen.Select(Bottles, Gen.Double[0.5, 8]).Sample((bottle, warmer) =>
        {
            var (cool, warm) = (Paths(bottle), Paths(bottle with { Temperature = new Temperature(bottle.Temperature.Kelvin + warmer) }));
            return cool.All(p => p.Value.Verdict != PathVerdict.Applies || warm[p.Key].Verdict != PathVerdict.Applies
                || warm[p.Key].Rate.Expected.KilogramsPerSecond >= p.Value.Rate.Expected.KilogramsPerSecond * (1 - 1e-9));
        }, iter: 150);

    [Fact]
    public void EachPath_HoldsItsExpected() =>
        Bottles.Sample(bottle => Paths(bottle).Values.All(p => p.Rate.Low <= p.Rate.Expected && p.Rate.Expected <= p.Rate.High && p.Rate.Low.KilogramsPerSecond >= 0), iter: 150);

    [Fact]
    public void Liner_TwiceAsThick_PassesHalf() =>
        Gen.Select(Bench.Any("acetone", "water", "toluene", "ethanol 96%"), Gen.Double[0.1, 3]).Sample((content, millimetres) =>
        {
            var one = Bench.Of(content, 50, "glass reagent bottle 250 mL", "screw cap, PTFE-faced liner");
            Situation With(double thickness) => one with { Closure = one.Closure with { LinerThickness = Length.FromMillimetres(thickness) } };
            return Math.Abs((Rate(With(millimetres), "through the liner") / Rate(With(2 * millimetres), "through the liner")) - 2) < 1e-6;
        }, iter: 40);

    [Fact]
    public void Gap_WiderOrShorter_NeverPassesLess() =>
        Gen.Select(Bench.Any("bromine", "acetone", "hydrochloric acid 37%"), Gen.Double[0.1, 20], Gen.Double[1, 5]).Sample((content, micrometres, times) =>
        {
            var one = Bench.Of(content, 50, "ground-joint bottle 250 mL", "ground-glass stopper, dry");
            Situation With(double gap, double path) => one with
            {
                Closure = one.Closure with { Gap = Band<Length>.Exactly(Length.FromMicrometres(gap)), Path = Length.FromMillimetres(path) },
            };
            var rate = Rate(With(micrometres, 20), "past the closure");
            return Rate(With(micrometres * times, 20), "past the closure") >= rate && Rate(With(micrometres, 20 * times), "past the closure") <= rate;
        }, iter: 60);

    [Fact]
    public void Cover_Deeper_NeverPassesMore() =>
        Gen.Select(Bench.Any("water", "sulfuric acid 98%"), Gen.Double[1, 20], Gen.Double[1, 20]).Sample((cover, depth, more) =>
        {
            Situation With(double millimetres) => Bench.BromineUnder(cover) with { CoverDepth = Length.FromMillimetres(millimetres) };
            return Forecast.Of(With(depth + more), Bench.Facts, Bench.Day).LossRate!.Value.Expected <= Forecast.Of(With(depth), Bench.Facts, Bench.Day).LossRate!.Value.Expected;
        }, iter: 40);

    // Nothing drives out what is not there, what has decayed to nothing, or a vapour that the room is full of.
    [Fact]
    public void EachPath_NoDrivingForce_NoLoss()
    {
        var full = Bench.Of("water", 50, "HDPE bottle 250 mL", "screw cap, PTFE-faced liner") with { Humidity = new Fraction(1) };
        Assert.All(Paths(full).Values, p => Assert.Equal(0, p.Rate.High.KilogramsPerSecond, 1e-20));
        var metal = Bench.Of("tungsten", 50, "HDPE bottle 250 mL", "loose cap");
        Assert.All(Paths(metal).Values, p => Assert.Equal(0, p.Rate.High.KilogramsPerSecond, 1e-20));
        var still = Bench.Of("acetone", 50, "glass reagent bottle 250 mL", "loose cap");
        Assert.Equal(0, Rate(still, "breathing"));
    }

    [Fact]
    public void Forecast_HalfTheYearTwice_IsTheYear() =>
        Gen.Select(Bottles, Gen.Int[1, 364]).Sample((bottle, first) =>
        {
            var year = Bench.Day.AddDays(365);
            if (Forecast.Of(bottle, Bench.Facts, year).Remaining is not { } direct)
                return true;
            var middle = Forecast.Of(bottle, Bench.Facts, Bench.Day.AddDays(first)).Remaining!.Value.Expected;
            if (middle.Grams < 1)
                return true;
            var inTwo = Forecast.Of(bottle with { Amount = middle, AmountOn = Bench.Day.AddDays(first) }, Bench.Facts, year).Remaining!.Value.Expected;
            return bottle.Content.Pure is null || Math.Abs((direct.Expected - inTwo).Grams) < 0.005 * 5;
        }, iter: 100);

    // Unknown: a wall that no table lists, at a temperature beyond every range: said, or wider, never a figure alone.
    [Fact]
    public void Wall_ThatNoTableLists_IsNotCountedAndSaid()
    {
        var bottle = Bench.Of("toluene", 50, "HDPE bottle 250 mL", "screw cap, PTFE-faced liner");
        var forecast = Forecast.Of(bottle with { Vessel = bottle.Vessel with { Material = "celluloid" } }, Bench.Facts, Bench.Day);
        Assert.False(forecast.IsComplete);
        Assert.Contains(forecast.Warnings, w => w.Contains("celluloid", StringComparison.Ordinal));
    }

    [Fact]
    public void Temperature_BeyondTheFit_WidensTheBand()
    {
        // Its fit begins at 295 K.
        double Width(double celsius)
        {
            var rate = Forecast.Of(Bench.Of("4-methylpentan-2-one", 50, "glass reagent bottle 250 mL", "none", celsius), Bench.Facts, Bench.Day).LossRate!.Value;
            return rate.High / rate.Low;
        }

        Assert.True(Width(-60) > Width(25) * 1.2);
    }

    [Theory]
    [InlineData("mercury", 2000, "glass reagent bottle 100 mL", true)]
    [InlineData("mercury", 1000, "glass reagent bottle 100 mL", false)]
    [InlineData("argon", 1, "glass ampoule 10 mL", true)]
    [InlineData("argon", 0.015, "glass ampoule 10 mL", false)]
    [InlineData("hydrochloric acid 37%", 400, "glass reagent bottle 250 mL", true)]
    public void Vessel_ThatCannotHoldIt_IsSaid(string content, double grams, string vessel, bool overfull)
    {
        var forecast = Forecast.Of(Bench.Of(content, grams, vessel, "flame seal", 20), Bench.Facts, Bench.Day);
        Assert.Equal(overfull, forecast.Warnings.Any(w => w.Contains("amount or vessel is wrong", StringComparison.Ordinal)));
        Assert.True(!overfull || !forecast.IsComplete);
    }

    [Theory]
    [InlineData("hydrogen peroxide 3%", null, 2.5)]
    [InlineData("hydrogen peroxide 30%", null, 29)]
    [InlineData("sodium hypochlorite 12%", 8.0, 8)]
    public void Strength_BelowUse_IsADate(string content, double? keepers, double percent)
    {
        var strength = Forecast.Of(
            Bench.Of(content, 100, "HDPE bottle 125 mL", "vented cap", 22) with { LeastStrength = keepers is { } own ? Fraction.FromPercent(own) : null }, Bench.Facts, Bench.Day).Strength!;
        var below = strength.BelowUse!;
        Assert.Contains($"below {percent:0.#} %", below.Limit, StringComparison.Ordinal);
        Assert.True(below.Low <= below.Expected && (below.High is null || below.Expected <= below.High));
        var then = Forecast.Of(Bench.Of(content, 100, "HDPE bottle 125 mL", "vented cap", 22), Bench.Facts, below.Expected!.Value).Strength!;
        Assert.Equal(below.Left.Value, then.Left.Expected.Value, 0.01);
    }
}
