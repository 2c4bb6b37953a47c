using CsCheck;
using Stockroom.Assessment.Losses.WeighIns;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

public sealed class SealVerdictTests
{
    private static Situation Bromine(params (int Day, double Grams)[] weighings) =>
        Bench.Of("bromine", 100, "ground-joint bottle 250 mL", "ground-glass stopper, greased", 20) with
        {
            Weighings = [.. weighings.Select(w => new WeighIn(Bench.Day.AddDays(w.Day), Mass.FromGrams(w.Grams), Mass.FromGrams(0.01)))],
        };

    [Fact]
    public void Seal_OneWeighing_IsNotEnough() =>
        Assert.Equal(SealState.NotEnough, SealVerdict.Of(Bromine((0, 400)), Bench.Facts).State);

    [Fact]
    public void Seal_LossFarAboveTheClosure_IsFailing()
    {
        var verdict = SealVerdict.Of(Bromine((0, 400), (90, 396), (180, 391.8)), Bench.Facts);
        Assert.Equal(SealState.Failing, verdict.State);
        Assert.True(verdict.Measured!.Low > verdict.Forecast!.Value.High);
        Assert.Contains("g a year", verdict.Because, StringComparison.Ordinal);
    }

    // One step of the balance is no change, whatever the interval.
    [Theory]
    [InlineData(7)]
    [InlineData(90)]
    [InlineData(700)]
    public void Seal_ChangeOfOneStep_RaisesNoAlarm(int days) =>
        Assert.Equal(SealState.NoChange, SealVerdict.Of(Bromine((0, 400), (days, 399.99)), Bench.Facts).State);

    [Fact]
    public void Seal_LossWithinTheBand_IsWithin() =>
        Assert.Equal(SealState.Within, SealVerdict.Of(Bromine((0, 400), (365, 399.8), (730, 399.6)), Bench.Facts).State);

    [Fact]
    public void Seal_MassRises_SaysSo() =>
        Assert.Equal(SealState.Rising, SealVerdict.Of(Bromine((0, 400), (200, 400.5), (400, 401.1)), Bench.Facts).State);

    // Tenfold at the last weighing, still within the closure's wide band: the bottle's own past tells. One interval may hide a draw that
    // nobody booked; two in a row are a leak.
    [Theory]
    [InlineData(1, "not booked")]
    [InlineData(2, "begun to leak")]
    public void Seal_BeginsToLeakTenfold_IsFlaggedByTheNextWeighing(int since, string words)
    {
        var weighings = new (int, double)[] { (0, 400), (180, 399), (360, 398), (540, 388), (720, 378) };
        var dry = Bromine(weighings[..(3 + since)]) with { Closure = Bench.Ware.FindClosure("ground-glass stopper, dry")! };
        var verdict = SealVerdict.Of(dry, Bench.Facts);
        Assert.Equal(SealState.Failing, verdict.State);
        Assert.Contains(words, verdict.Because, StringComparison.Ordinal);
    }

    // The same drop, and no more after it: a draw that nobody booked, not a leak.
    [Fact]
    public void Seal_DropsOnceAndHoldsAgain_IsNoAlarm()
    {
        var dry = Bromine((0, 400), (180, 399), (360, 398), (540, 388), (720, 387), (900, 386)) with { Closure = Bench.Ware.FindClosure("ground-glass stopper, dry")! };
        Assert.False(SealVerdict.Of(dry, Bench.Facts).IsAlarm);
    }

    [Fact]
    public void Seal_DrawBetweenWeighings_IsNotALoss()
    {
        var drawn = Bromine((0, 400), (100, 399.95), (110, 379.9), (210, 379.85)) with { Draws = [new Draw(Bench.Day.AddDays(105), Mass.FromGrams(20))] };
        Assert.NotEqual(SealState.Failing, SealVerdict.Of(drawn, Bench.Facts).State);
    }

    [Fact]
    public void Seal_OnlyDrawsBetween_IsNotEnough()
    {
        var drawn = Bromine((0, 400), (100, 380)) with { Draws = [new Draw(Bench.Day.AddDays(50), null)] };
        Assert.Equal(SealState.NotEnough, SealVerdict.Of(drawn, Bench.Facts).State);
    }

    // A sealed 300 mL vessel changes 28 mg between a low on a warm day and a high on a cold one: buoyancy, no alarm.
    [Fact]
    public void Seal_BuoyancyOfASealedVessel_RaisesNoAlarm()
    {
        var sealedOne = Bench.Of("bromine", 3, "glass ampoule 50 mL", "flame seal", 20);
        sealedOne = sealedOne with
        {
            Vessel = sealedOne.Vessel with { OutsideVolume = Volume.FromMillilitres(300) },
            Weighings = [new WeighIn(Bench.Day, Mass.FromGrams(200.0000), Mass.FromGrams(0.001)), new WeighIn(Bench.Day.AddDays(120), Mass.FromGrams(199.9800), Mass.FromGrams(0.001))],
        };
        Assert.Equal(SealState.NoChange, SealVerdict.Of(sealedOne, Bench.Facts).State);
    }

    // Ten weighings of an exact line: the slope is that of the line (ordinary least squares).
    [Fact]
    public void Measured_ExactLine_IsItsSlope() =>
        Gen.Select(Gen.Double[0, 50], Gen.Int[2, 12]).Sample((perYear, count) =>
        {
            var w = Enumerable.Range(0, count).Select(i => new WeighIn(Bench.Day.AddDays(i * 40), Mass.FromGrams(500 - (perYear * i * 40 / 365.25)), Mass.FromGrams(0.01))).ToList();
            return Math.Abs(MeasuredLoss.Of(w, [], default)!.Rate.GramsPerYear - perYear) < 1e-6;
        }, iter: 100);
}
