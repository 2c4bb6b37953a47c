using CsCheck;
using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>A newly filled bottle loses less through wall and liner until their lags are over. Source: Crank, The Mathematics of Diffusion, 2nd ed., section 4.3.3.</summary>
public sealed class WallLagTests
{
    private static readonly Gen<Situation> Bottles = Gen.Select(
        Bench.Any("toluene", "acetone", "water", "ethanol 70%", "hydrochloric acid 37%", "diethyl ether", "n-hexane", "iodine"),
        Bench.Any("HDPE bottle 250 mL", "LDPE bottle 125 mL", "PP bottle 250 mL", "PFA bottle 250 mL", "amber glass bottle 250 mL"),
        Bench.Any("screw cap, PTFE-faced liner", "HDPE screw cap", "rubber bung", "plain polypropylene screw cap"),
        Gen.Double[2, 30],
        Gen.Double[0, 15]).Select(b => Bench.Of(b.Item1, 60, b.Item2, b.Item3, b.Item4) with { SeasonalSwing = new TemperatureChange(b.Item5) });

    private static Situation Since(Situation bottle, int daysBefore) => bottle with { InVesselSince = Bench.Day.AddDays(-daysBefore) };

    private static Band<Mass>? Left(Situation bottle, int days) => Forecast.Of(bottle, Bench.Facts, Bench.Day.AddDays(days)).Remaining;

    // Step by step through the flow of each sheet by its own share, the season's rate and the falling amount; the flow by the series for short
    // times, which the engine does not use. The approximation holds to half a per cent of what there was, in every season and for mixtures too.
    [Theory]
    [InlineData("toluene", "HDPE bottle 250 mL", 0, 0)]
    [InlineData("toluene", "HDPE bottle 250 mL", 15, 0)]
    [InlineData("toluene", "LDPE bottle 125 mL", 15, 3)]
    [InlineData("acetone", "HDPE bottle 250 mL", 15, 1)]
    [InlineData("n-hexane", "PP bottle 250 mL", 15, 0)]
    [InlineData("ethanol 70%", "LDPE bottle 125 mL", 10, 0)]
    [InlineData("water", "LDPE bottle 125 mL", 10, 2)]
    public void Left_AgreesWithStepwiseIntegration(string content, string vessel, double seasons, int daysBefore)
    {
        foreach (var warmest in new[] { 1, 4, 7, 10 })
        {
            var bottle = Since(Bench.Of(content, 80, vessel, "HDPE screw cap", 22) with { SeasonalSwing = new TemperatureChange(seasons), WarmestMonth = warmest }, daysBefore);
            var stepwise = Stepwise(bottle, daysBefore, 60, 0.05);
            foreach (var day in new[] { 1, 2, 4, 7, 14, 30, 60 })
                Assert.Equal(stepwise[day], Left(bottle, day)!.Value.Expected.Grams, 0.005 * 80);
        }
    }

    // The same at half the step, so that what is compared with is itself exact.
    [Fact]
    public void Stepwise_AtHalfTheStep_IsTheSame()
    {
        var bottle = Since(Bench.Of("toluene", 80, "HDPE bottle 250 mL", "HDPE screw cap", 22), 0);
        var (coarse, fine) = (Stepwise(bottle, 0, 30, 0.05), Stepwise(bottle, 0, 30, 0.025));
        foreach (var day in new[] { 1, 4, 30 })
            Assert.Equal(fine[day], coarse[day], 0.0005 * 80);
    }

    // Late, what is left is more by rate times lag: Q = F (t - l^2/6D); and every date lies later by the lag, as far as the wall has a part in it.
    [Fact]
    public void Late_TheDatesLieLaterByTheLag()
    {
        var bottle = Bench.Of("toluene", 200, "HDPE bottle 250 mL", "screw cap, PTFE-faced liner", 25);
        var (soaked, fresh) = (Forecast.Of(bottle, Bench.Facts, Bench.Day.AddDays(60)), Forecast.Of(Since(bottle, 0), Bench.Facts, Bench.Day.AddDays(60)));
        var wall = soaked.Paths.Single(p => p.Path == "through the wall");
        var lag = LossExplanation.Of(bottle, Bench.Facts).Paths.Single(p => p.Path == "through the wall").Lags.Single().Lag!.Value.Expected;
        Assert.Equal(1.2e-3 * 1.2e-3 / 6e-12 / 86400, lag.Days, 1e-6);
        Assert.True(wall.Share.Value > 0.9);
        Assert.Contains(fresh.Warnings, w => w.Contains("not soaked through", StringComparison.Ordinal));
        Assert.DoesNotContain(soaked.Warnings, w => w.Contains("not soaked through", StringComparison.Ordinal));
        var more = fresh.Remaining!.Value.Expected.Grams - soaked.Remaining!.Value.Expected.Grams;
        Assert.Equal(wall.Rate.Expected.GramsPerYear / 365.25 * lag.Days, more, 0.02 * more);
        foreach (var (was, now) in soaked.Reaches.Zip(fresh.Reaches))
            Assert.InRange(now.Expected!.Value.DayNumber - was.Expected!.Value.DayNumber, (int)Math.Floor(lag.Days * wall.Share.Value) - 1, (int)Math.Ceiling(lag.Days) + 1);
    }

    [Fact]
    public void Lag_Any_NeverRaisesTheLossAndFades() =>
        Gen.Select(Bottles, Gen.Int[0, 60], Gen.Int[0, 60], Gen.Int[1, 400]).Sample((bottle, a, b, days) =>
        {
            if (Left(bottle, days) is not { } soaked)
                return true;
            var (newer, older) = (Left(Since(bottle, Math.Min(a, b)), days)!.Value, Left(Since(bottle, Math.Max(a, b)), days)!.Value);
            bool NoLess(Mass x, Mass y) => x.Kilograms >= y.Kilograms - 1e-9;
            bool All(Func<Band<Mass>, Mass> end) => NoLess(end(newer), end(older)) && NoLess(end(older), end(soaked));
            var old = Left(Since(bottle, 3650), days)!.Value;
            return All(m => m.Low) && All(m => m.Expected) && All(m => m.High)
                && newer.Low <= newer.Expected && newer.Expected <= newer.High && Math.Abs(old.Expected.Grams - soaked.Expected.Grams) < 1e-3;
        }, iter: 200);

    [Fact]
    public void Dates_BehindALag_KeepTheirOrder() =>
        Bottles.Sample(bottle =>
        {
            var fresh = Forecast.Of(Since(bottle, 0), Bench.Facts, Bench.Day);
            var soaked = Forecast.Of(bottle, Bench.Facts, Bench.Day);
            return fresh.Reaches.Zip(soaked.Reaches).All(r => Later(r.First.Low, r.Second.Low) && Later(r.First.Expected, r.Second.Expected) && Later(r.First.High, r.Second.High)
                && (r.First.Expected is null || r.First.Low <= r.First.Expected) && (r.First.High is null || r.First.Expected <= r.First.High));
            static bool Later(DateOnly? x, DateOnly? y) => y is null || x is null || x.Value.DayNumber >= y.Value.DayNumber - 1;
        }, iter: 100);

    // On the day named, so much is left as is named: dates and amounts are of one course, lag or not.
    [Fact]
    public void Dates_BehindALag_AgreeWithWhatIsLeft() =>
        Gen.Select(Bottles, Gen.Int[0, 20]).Sample((bottle, before) =>
        {
            var fresh = Since(bottle, before);
            if (Forecast.Of(fresh, Bench.Facts, Bench.Day).Reaches is not [{ Expected: { } day }, ..])
                return true;
            double At(DateOnly d) => Forecast.Of(fresh, Bench.Facts, d).Remaining!.Value.Expected.Grams;
            return At(day.AddDays(2)) <= (0.9 * 60) + 0.01 && (day <= Bench.Day || At(day.AddDays(-1)) >= (0.9 * 60) - 0.01);
        }, iter: 100);

    // Weighed at filling and in the weeks after: what is seen is less than the steady loss, and the seal is neither praised nor blamed for it.
    [Theory]
    [InlineData(1e-11)]
    [InlineData(1e-12)]
    [InlineData(1e-13)]
    public void Weighings_OfANewlyFilledBottle_LeaveTheSteadyRateInTheBand(double d)
    {
        var bottle = Since(Bench.Of("toluene", 200, "HDPE bottle 250 mL", "screw cap, PTFE-faced liner", 22), 0);
        var perDay = Forecast.Of(bottle, Bench.Facts, Bench.Day).LossRate!.Value.Expected.GramsPerYear / 365.25;
        var lag = 1.2e-3 * 1.2e-3 / (6 * d) / 86400;
        WeighIn At(int day) => new(Bench.Day.AddDays(day), Mass.FromGrams(230 - (perDay * Through(day, lag))), Mass.FromGrams(0.01));
        var weighed = bottle with { Weighings = [At(0), At(2), At(5), At(9), At(14), At(21)] };
        var forecast = Forecast.Of(weighed, Bench.Facts, Bench.Day.AddDays(21));
        Assert.True(forecast.Weighed!.Follows);
        Assert.False(forecast.Weighed.Verdict.IsAlarm, forecast.Weighed.Verdict.Because);
        Assert.InRange(perDay * 365.25, forecast.LossRate!.Value.Low.GramsPerYear, forecast.LossRate!.Value.High.GramsPerYear);

        // Taken as soaked through, the slow wall's weighings would promise a loss that the coming months exceed.
        var soaked = Forecast.Of(weighed with { InVesselSince = null }, Bench.Facts, Bench.Day.AddDays(21)).LossRate!.Value;
        if (d <= 1e-12)
            Assert.True(soaked.Expected < forecast.LossRate!.Value.Expected);
    }

    [Fact]
    public void Explanation_NamesTheLagOfWallAndLiner_WithItsSource()
    {
        var bottle = Bench.Of("toluene", 80, "HDPE bottle 250 mL", "screw cap, PTFE-faced liner");
        var explained = LossExplanation.Of(bottle, Bench.Facts);
        foreach (var path in new[] { "through the wall", "through the liner" })
        {
            var lag = Assert.Single(explained.Paths.Single(p => p.Path == path).Lags);
            Assert.True(lag.Lag!.Value.Low < lag.Lag.Value.Expected && lag.Lag.Value.Expected < lag.Lag.Value.High);
            Assert.NotNull(lag.Source);
        }

        Assert.Contains("not known", explained.Lagging, StringComparison.Ordinal);
        Assert.Contains("2026-01-01", LossExplanation.Of(Since(bottle, 0), Bench.Facts).Lagging, StringComparison.Ordinal);
        Assert.All(LossExplanation.Of(Bench.BromineUnder(null), Bench.Facts).Paths, p => Assert.Empty(p.Lags));
    }

    // Days at the steady rate that came through by a day: the integral of the flow by the series for short times.
    private static double Through(double days, double lag)
    {
        const int Panels = 400;
        var sum = 0.0;
        for (var i = 0; i < Panels; i++)
            sum += Flow(days * (i + 0.5) / Panels, lag);
        return sum * days / Panels;
    }

    // Rogers, Buritz, Alpert, J. Appl. Phys. 25 (1954) 868.
    private static double Flow(double days, double lag)
    {
        var x = days / lag / 6;
        var sum = 0.0;
        for (var m = 0; m < 40; m++)
            sum += Math.Exp(-Math.Pow((2 * m) + 1, 2) / (4 * x));
        return x <= 0 ? 0 : x > 3 ? 1 : 2 / Math.Sqrt(Math.PI * x) * sum;
    }

    private static Dictionary<int, double> Stepwise(Situation bottle, int daysBefore, int days, double step)
    {
        var lags = LossExplanation.Of(bottle, Bench.Facts).Paths.ToDictionary(p => p.Path, p => p.Lags.ToDictionary(l => l.Part, l => l.Lag));
        var parts = bottle.Content.Parts.ToDictionary(p => p.Substance, p => bottle.Amount.Kilograms * (double)p.Percent / 100);
        var season = YearNetwork.Of(bottle, Bench.Facts).SeasonFrom(bottle.AmountOn);
        var (left, perDay) = (new Dictionary<int, double>(), (int)Math.Round(1 / step));
        for (var i = 0; i < days * perDay; i++)
        {
            var whole = parts.Values.Sum();
            var content = bottle.Content with { Parts = [.. parts.Select(p => new Chemistry.Catalogue.Part(p.Key, (decimal)(100 * p.Value / whole)))] };
            var year = YearNetwork.Of(bottle with { Content = content, Amount = new Mass(whole) }, Bench.Facts).Year;
            var (from, to) = (Span.FromDays(i * step), Span.FromDays((i + 1) * step));
            var even = (season.Effective(to) - season.Effective(from)).Seconds;
            foreach (var path in year.Paths.Where(p => p.Finding.Role != PathRole.Strength))
            {
                foreach (var l in path.Leaves)
                    parts[l.Part] -= even * l.Rate.Expected.KilogramsPerSecond * (lags[path.Path].GetValueOrDefault(l.Part) is { } lag ? Flow(daysBefore + ((i + 0.5) * step), lag.Expected.Days) : 1);
            }

            if ((i + 1) % perDay == 0)
                left[(i + 1) / perDay] = Math.Max(0, parts.Values.Sum() * 1000);
        }

        return left;
    }
}
