using CsCheck;
using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

public sealed class SeasonTests
{
    // Abramowitz and Stegun, table 9.8: I0(1) = 1.2660658778, I1(1) = 0.5651591040, I0(2) = 2.2795853023.
    [Theory]
    [InlineData(0, 1, 1.2660658778)]
    [InlineData(1, 1, 0.5651591040)]
    [InlineData(0, 2, 2.2795853023)]
    public void Bessel_IsThatOfTheTable(int order, double x, double expected) => Assert.Equal(expected, Season.Bessel(order, x), 1e-9);

    [Fact]
    public void Year_OfEffectiveTime_IsAYear() =>
        Gen.Select(Gen.Double[-2, 2], Gen.Int[1, 12], Gen.Int[0, 364]).Sample((swing, month, day) =>
        {
            var season = new Season(new Fraction(swing), new DateOnly(2026, 1, 1).AddDays(day), month);
            return Math.Abs(season.Effective(Span.FromYears(1)).Years - 1) < 1e-6 && season.Effective(new Span(0)).Seconds == 0;
        }, iter: 100);

    // Against a plain sum over the hours of the stretch.
    [Fact]
    public void Effective_AnyStretch_IsTheSumOverItsHours() =>
        Gen.Select(Gen.Double[0, 1.5], Gen.Int[1, 12], Gen.Int[1, 400]).Sample((swing, month, days) =>
        {
            var from = new DateOnly(2026, 3, 1);
            var warmest = new DateOnly(2026, month, 16);
            var (sum, mean) = (0.0, Season.Bessel(0, swing));
            for (var hour = 0; hour < 24 * days; hour++)
            {
                var t = from.DayNumber - warmest.DayNumber + ((hour + 0.5) / 24);
                sum += Math.Exp(swing * Math.Cos(2 * Math.PI * t / 365.25)) / mean / 24;
            }

            return Math.Abs(new Season(new Fraction(swing), from, month).Effective(Span.FromDays(days)).Days - sum) < 1e-3 * (1 + sum);
        }, iter: 50);

    [Fact]
    public void Calendar_UndoesEffective() =>
        Gen.Select(Gen.Double[0, 2], Gen.Double[0, 5000]).Sample((swing, days) =>
        {
            var season = new Season(new Fraction(swing), new DateOnly(2026, 5, 1), 7);
            return Math.Abs(season.Calendar(season.Effective(Span.FromDays(days))).Days - days) < 0.01;
        }, iter: 100);

    // A rate that goes with exp(b T): its mean over a season and a day is the product of two Bessel functions.
    [Fact]
    public void Moments_OfAnArrheniusRate_GiveTheProductOfBesselFunctions() =>
        Gen.Select(Gen.Double[0.02, 0.08], Gen.Double[0.1, 14], Gen.Double[0.1, 20]).Sample((b, day, season) =>
        {
            var place = Bench.BromineUnder(null) with { DailySwing = new TemperatureChange(day), SeasonalSwing = new TemperatureChange(season) };
            var mean = Climate.Moments(place).Sum(m => m.Weight * Math.Exp(b * (m.At.Kelvin - place.Temperature.Kelvin)));
            return Math.Abs(mean / (Season.Bessel(0, b * day / 2) * Season.Bessel(0, b * season / 2)) - 1) < 0.003;
        }, iter: 200);

    [Fact]
    public void Moments_WeighOne_AndKeepTheMean() =>
        Gen.Select(Gen.Double[0, 20], Gen.Double[0.1, 30]).Sample((day, season) =>
        {
            var place = Bench.BromineUnder(null) with { DailySwing = new TemperatureChange(day), SeasonalSwing = new TemperatureChange(season) };
            var moments = Climate.Moments(place);
            return Math.Abs(moments.Sum(m => m.Weight) - 1) < 1e-12 && Math.Abs(moments.Sum(m => m.Weight * m.At.Kelvin) - place.Temperature.Kelvin) < 1e-9;
        }, iter: 100);

    // Half a year of summer takes more than half a year of winter, and together they take the year.
    [Fact]
    public void Forecast_SummerHalf_TakesMoreThanTheWinterHalf()
    {
        var april = new DateOnly(2026, 4, 16);
        var bottle = Bench.Of("acetone", 150, "ground-joint bottle 250 mL", "ground-glass stopper, dry", 18) with { AmountOn = april, Filled = april, SeasonalSwing = new TemperatureChange(16) };
        double Left(DateOnly on) => Forecast.Of(bottle, Bench.Facts, on).Remaining!.Value.Expected.Grams;
        var (summer, winter) = (150 - Left(april.AddDays(183)), Left(april.AddDays(183)) - Left(april.AddDays(365)));
        Assert.True(summer > 1.3 * winter);
        var south = bottle with { WarmestMonth = 1 };
        Assert.True(150 - Forecast.Of(south, Bench.Facts, april.AddDays(183)).Remaining!.Value.Expected.Grams < winter * 1.1);
    }

    [Fact]
    public void Forecast_WiderSwing_NeverLosesLess() =>
        Gen.Select(Bench.Any("acetone", "iodine", "toluene", "hydrochloric acid 37%", "ethanol 70%"), Gen.Double[0, 10], Gen.Double[0.1, 8]).Sample((content, season, more) =>
        {
            var bottle = Bench.Of(content, 50, "ground-joint bottle 250 mL", "ground-glass stopper, dry", 20) with { SeasonalSwing = new TemperatureChange(season) };
            var wider = bottle with { SeasonalSwing = new TemperatureChange(season + more) };
            return Forecast.Of(wider, Bench.Facts, Bench.Day).LossRate!.Value.Expected.KilogramsPerSecond
                >= Forecast.Of(bottle, Bench.Facts, Bench.Day).LossRate!.Value.Expected.KilogramsPerSecond * (1 - 1e-9);
        }, iter: 60);
}
