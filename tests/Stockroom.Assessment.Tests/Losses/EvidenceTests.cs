using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearRegression;
using Stockroom.Assessment.Losses;
using Stockroom.Assessment.Losses.WeighIns;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

public sealed class EvidenceTests
{
    private static Situation Hexane(params WeighIn[] weighings) =>
        Bench.Of("n-hexane", 260, "ground-joint bottle 500 mL", "ground-glass stopper, dry", 19) with { Weighings = weighings };

    private static WeighIn At(int day, double grams, double readability = 0.01) =>
        new(Bench.Day.AddDays(day), Mass.FromGrams(grams), Mass.FromGrams(readability));

    // Weights are one over the variance: the regression of a library knows nothing of segments or buoyancy, so one segment without volume.
    [Fact]
    public void Measured_UnevenWeighings_AgreesWithAWeightedRegression() =>
        Gen.Select(Gen.Double[-5, 5].Array[10], Gen.Double[0.001, 1].Array[10], Gen.Double[0, 60]).Sample((off, readability, perYear) =>
        {
            var weighings = Enumerable.Range(0, 10).Select(i => At(i * (20 + i), 300 - (perYear * i * (20 + i) / 365.25) + (off[i] * readability[i]), readability[i]) with { Calibration = new Mass(0) }).ToArray();
            var x = Matrix<double>.Build.Dense(10, 2, (i, j) => j == 0 ? 1 : weighings[i].On.DayNumber - Bench.Day.DayNumber);
            var y = Vector<double>.Build.Dense(10, i => weighings[i].Gross.Grams);
            var w = Matrix<double>.Build.DenseOfDiagonalArray([.. readability.Select(r => 1 / (((r * r) * 1e-6) + Air(300)))]);
            var slope = WeightedRegression.Weighted(x, y, w)[1];
            return Math.Abs(MeasuredLoss.Of(weighings, [], default)!.Rate.GramsPerYear + (slope * 365.25)) < 1e-4 * (1 + Math.Abs(slope * 365.25));
        }, iter: 100);

    // Of no outside volume, what the air leaves open is that of the masses alone: 0.03 kg/m3 of 300 g/8000 kg/m3, squared, in kg.
    private static double Air(double grams) => Math.Pow(0.03 * grams / 1000 / 8000, 2);

    [Fact]
    public void Forecast_TenWeighingsOfAStraightLoss_AgreesWithTheRegression()
    {
        foreach (var perYear in new[] { 0.5, 2.0, 8.0, 50.0 })
        {
            var weighings = Enumerable.Range(0, 10).Select(i => At(i * 36, 500 - (perYear * i * 36 / 365.25))).ToArray();
            var forecast = Forecast.Of(Hexane(weighings), Bench.Facts, Bench.Day.AddDays(330));
            Assert.True(forecast.Weighed!.Follows);
            Assert.Equal(perYear, forecast.LossRate!.Value.Expected.GramsPerYear, 0.05 * perYear);
            Assert.InRange(perYear, forecast.LossRate!.Value.Low.GramsPerYear, forecast.LossRate!.Value.High.GramsPerYear);
            Assert.True(forecast.LossRate!.Value.High / forecast.LossRate!.Value.Low < 1.6);
        }
    }

    // Scattered readings, uneven days and balances: the expected rate lies as near to the weighted regression as that is sure of itself and a
    // season that nobody stated allows (a tenth), and the band holds the regression's.
    [Fact]
    public void Forecast_TenScatteredWeighings_AgreesWithTheWeightedRegression() =>
        Gen.Select(Gen.Double[-1.5, 1.5].Array[10], Gen.Double[0.005, 0.05].Array[10], Gen.Double[2, 60]).Sample((off, readability, perYear) =>
        {
            var weighings = Enumerable.Range(0, 10).Select(i => At(i * (20 + i), 500 - (perYear * i * (20 + i) / 365.25) + (off[i] * readability[i]), readability[i]) with { Calibration = new Mass(0) }).ToArray();
            var x = Matrix<double>.Build.Dense(10, 2, (i, j) => j == 0 ? 1 : weighings[i].On.DayNumber - Bench.Day.DayNumber);
            var w = Matrix<double>.Build.DenseOfDiagonalArray([.. readability.Select(r => 1 / ((r * r) + 1e-4))]);
            var regression = -365.25 * WeightedRegression.Weighted(x, Vector<double>.Build.Dense(10, i => weighings[i].Gross.Grams), w)[1];
            var rate = Forecast.Of(Hexane(weighings), Bench.Facts, weighings[^1].On).LossRate!.Value;
            var sure = 2 * 365.25 / Math.Sqrt(Enumerable.Range(0, 10).Sum(i => w[i, i] * Math.Pow(x[i, 1] - 120, 2)));
            return Math.Abs(rate.Expected.GramsPerYear - regression) < sure + (0.1 * regression) && rate.Low.GramsPerYear < regression && regression < rate.High.GramsPerYear;
        }, iter: 60);

    [Fact]
    public void Forecast_TwoWeighings_MoveTheAnswer()
    {
        var unweighed = Forecast.Of(Hexane(), Bench.Facts, Bench.Day.AddDays(120)).LossRate!.Value;
        var weighed = Forecast.Of(Hexane(At(0, 500), At(120, 497.5)), Bench.Facts, Bench.Day.AddDays(120));
        Assert.Null(Forecast.Of(Hexane(At(0, 500)), Bench.Facts, Bench.Day).Weighed);
        Assert.Equal(2.5 / 120 * 365.25, weighed.LossRate!.Value.Expected.GramsPerYear, 0.08 * 2.5 / 120 * 365.25);
        Assert.True(weighed.LossRate!.Value.High / weighed.LossRate!.Value.Low < 0.2 * (unweighed.High / unweighed.Low));
        Assert.Equal(unweighed.Expected.GramsPerYear, weighed.Weighed!.PriorRate.Expected.GramsPerYear, 1e-6);
        Assert.Equal(257.5, weighed.Remaining!.Value.Expected.Grams, 0.05);
    }

    // The scale of the curve is the weighings', its shape the physics': what falls faster when full falls faster when full.
    [Fact]
    public void Forecast_AfterWeighings_KeepsTheCurve()
    {
        var plain = Forecast.Of(Hexane(), Bench.Facts, Bench.Day);
        var weighed = Forecast.Of(Hexane(At(0, 500), At(120, 497.5), At(240, 495)), Bench.Facts, Bench.Day.AddDays(240));
        double Ratio(Forecast f, DateOnly from) => (double)(f.Reaches[2].Expected!.Value.DayNumber - from.DayNumber) / (f.Reaches[1].Expected!.Value.DayNumber - from.DayNumber);
        Assert.Equal(Ratio(plain, Bench.Day), Ratio(weighed, Bench.Day.AddDays(240)), 0.02);
    }

    // Between a low on a warm day and a high on a cold one a sealed 200 g ampoule of 300 mL gains or loses some 28 mg: with the air read at
    // each weighing it is corrected to a milligram; without, it is no alarm.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Seal_BuoyancyOfASealedAmpoule_IsNoAlarm(bool read)
    {
        var ampoule = Bench.Of("bromine", 3, "glass ampoule 50 mL", "flame seal", 20);
        var (warm, cold) = (Temperature.FromCelsius(24), Temperature.FromCelsius(16));
        var (low, high) = (new Pressure(98_000), new Pressure(103_500));
        var lighter = (Buoyancy.Air(cold, high, new Fraction(0.5)).KilogramsPerCubicMetre - Buoyancy.Air(warm, low, new Fraction(0.5)).KilogramsPerCubicMetre) * (300e-6 - (0.2 / 8000)) * 1000;
        Assert.InRange(lighter, 0.024, 0.032);
        WeighIn Reading(int day, double grams, Temperature t, Pressure p) => read
            ? At(day, grams, 0.001) with { At = t, Air = p }
            : At(day, grams, 0.001);
        var situation = ampoule with
        {
            Vessel = ampoule.Vessel with { OutsideVolume = Volume.FromMillilitres(300) },
            Weighings = [Reading(0, 200, warm, low), Reading(90, 200 - lighter, cold, high)],
        };
        var verdict = SealVerdict.Of(situation, Bench.Facts);
        Assert.Equal(SealState.NoChange, verdict.State);
        if (read)
            Assert.Equal(0, verdict.Measured!.Rate.GramsPerYear, 0.004);
    }

    // OIML R 111-1: air of 20 degrees C, 1013.25 hPa and 50 per cent humidity weighs 1.199 kg/m3 (CIPM-2007: 1.1992).
    [Theory]
    [InlineData(20, 101_325, 1.199)]
    [InlineData(0, 101_325, 1.291)]
    public void Air_Density_IsAsPublished(double celsius, double pascals, double expected) =>
        Assert.Equal(expected, Buoyancy.Air(Temperature.FromCelsius(celsius), new Pressure(pascals), new Fraction(0.5)).KilogramsPerCubicMetre, 0.0015);

    [Fact]
    public void Seal_FlameSealThatLosesMass_FailsAndTheForecastFollows()
    {
        var ampoule = Bench.Of("bromine", 10, "glass ampoule 10 mL", "flame seal", 20) with { Weighings = [At(0, 40, 0.001), At(60, 39.8, 0.001), At(120, 39.6, 0.001)] };
        var forecast = Forecast.Of(ampoule, Bench.Facts, Bench.Day.AddDays(120));
        Assert.Equal(SealState.Failing, forecast.Weighed!.Verdict.State);
        Assert.Equal(0.4 / 120 * 365.25, forecast.LossRate!.Value.Expected.GramsPerYear, 0.1);
        Assert.Equal(9.6, forecast.Remaining!.Value.Expected.Grams, 0.05);
        Assert.Contains(forecast.Warnings, w => w.Contains("fails", StringComparison.Ordinal));
    }

    [Fact]
    public void Seal_FlameSealThatHolds_StaysNothing()
    {
        var ampoule = Bench.Of("bromine", 10, "glass ampoule 10 mL", "flame seal", 20) with { Weighings = [At(0, 40, 0.001), At(60, 40.001, 0.001), At(120, 40, 0.001)] };
        var forecast = Forecast.Of(ampoule, Bench.Facts, Bench.Day.AddDays(120));
        Assert.False(forecast.Weighed!.Follows);
        Assert.Equal(0, forecast.LossRate!.Value.High.KilogramsPerSecond);
    }

    // Where the way out cannot be computed, what was weighed is the answer.
    [Fact]
    public void Forecast_UnknownWayOut_FollowsTheWeighings()
    {
        var cylinder = Bench.Of("chlorine", 400, "lecture bottle 440 mL", "valve", 20) with { Weighings = [At(0, 1400, 0.1), At(200, 1395, 0.1), At(400, 1390, 0.1)] };
        Assert.Null(Forecast.Of(cylinder with { Weighings = [] }, Bench.Facts, Bench.Day).LossRate);
        var forecast = Forecast.Of(cylinder, Bench.Facts, Bench.Day.AddDays(400));
        Assert.Equal(10 / 400.0 * 365.25, forecast.LossRate!.Value.Expected.GramsPerYear, 0.5);
        Assert.False(forecast.Weighed!.Verdict.IsAlarm);
    }

    // Bromine under acid: the acid drinks water from the air as the bromine goes. A flat mass says little, and the band stays wide.
    [Fact]
    public void Forecast_FlatMassUnderAnAcidCover_IsNoProof()
    {
        var covered = Bench.Of("iodine", 60, "ground-joint bottle 100 mL", "ground-glass stopper, dry", 20, "sulfuric acid 98%") with { Weighings = [At(0, 300), At(200, 300), At(400, 300)] };
        var bare = covered with { Cover = null, CoverDepth = null };
        var (under, open) = (Forecast.Of(covered, Bench.Facts, Bench.Day.AddDays(400)), Forecast.Of(bare, Bench.Facts, Bench.Day.AddDays(400)));
        double Shrunk(Forecast f) => Math.Log(f.LossRate!.Value.High / f.LossRate!.Value.Low) / Math.Log(f.Weighed!.PriorRate.High / f.Weighed!.PriorRate.Low);
        Assert.Contains(under.Warnings, w => w.Contains("can hide a loss", StringComparison.Ordinal));
        Assert.DoesNotContain(open.Warnings, w => w.Contains("can hide a loss", StringComparison.Ordinal));
        Assert.True(Shrunk(under) > 0.8);
    }

    [Fact]
    public void Forecast_DrawsOfTheSameDay_CountInTheOrderBooked()
    {
        WeighIn[] weighings = [At(0, 500) with { Order = 1 }, At(100, 499) with { Order = 5 }, At(200, 478) with { Order = 8 }];
        var after = Hexane(weighings) with { Draws = [new Draw(Bench.Day.AddDays(100), Mass.FromGrams(20)) { Order = 6 }] };
        var before = Hexane(weighings) with { Draws = [new Draw(Bench.Day.AddDays(100), Mass.FromGrams(1)) { Order = 4 }] };
        Assert.Equal(3.65, MeasuredLoss.Of(after.Weighings, after.Draws, default)!.Rate.GramsPerYear, 0.01);
        Assert.Equal(76.7, MeasuredLoss.Of(before.Weighings, before.Draws, default)!.Rate.GramsPerYear, 0.1);
    }

    // Whatever was drawn, lost and weighed in whatever order: received less drawn less lost is what is left. What is lost between
    // two weighings with a draw between them is not seen by the balance: it goes by the rate, and is out by as much as that is, and a tenth of it for
    // the falling level.
    [Fact]
    public void Remaining_AfterAnyDrawsLossesAndWeighings_KeepsTheMass() =>
        Gen.Select(Gen.Double[1, 30], Gen.Int[0, 2].Array[2, 12], Gen.Int[5, 60].Array[12]).Sample((perYear, what, waits) =>
        {
            var (day, left, unseenDays, lastWeighed, drawn) = (0, 260.0, 0, 0, false);
            var (weighings, draws) = (new List<WeighIn> { At(0, 500) with { Order = 1 } }, new List<Draw>());
            foreach (var (act, wait) in what.Zip(waits).Append((1, 30)))
            {
                day += wait;
                left -= perYear * wait / 365.25;
                if (act == 0)
                {
                    draws.Add(new Draw(Bench.Day.AddDays(day), Mass.FromGrams(5)) { Order = (2 * day) + 2 });
                    left -= 5;
                    drawn = true;
                }
                else
                {
                    unseenDays += drawn ? day - lastWeighed : 0;
                    (lastWeighed, drawn) = (day, false);
                    weighings.Add(At(day, 240 + left) with { Order = (2 * day) + 1 });
                }
            }

            var bottle = Hexane([.. weighings]) with { Amount = Mass.FromGrams(260 - draws.Sum(d => d.Amount!.Value.Grams)), Draws = draws };
            var forecast = Forecast.Of(bottle, Bench.Facts, Bench.Day.AddDays(day));
            if (forecast.Weighed?.Verdict.Measured is null)
                return true;
            var rateIsOut = Math.Abs(forecast.Weighed.Rate.Expected.GramsPerYear - perYear);
            return Math.Abs(forecast.Remaining!.Value.Expected.Grams - left) < 0.1 + ((rateIsOut + (0.1 * perYear)) * unseenDays / 365.25);
        }, iter: 60);
}
