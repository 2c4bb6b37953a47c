using CsCheck;
using Stockroom.Assessment.Losses;
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

    private static Situation Dry(params (int Day, double Grams)[] weighings) => Bromine(weighings) with { Closure = Bench.Ware.FindClosure("ground-glass stopper, dry")! };

    private static Situation Coarse(Situation situation) => situation with { Weighings = [.. situation.Weighings.Select(w => w with { Readability = Mass.FromGrams(0.3) })] };

    private static SealVerdict Of(Situation situation) => SealVerdict.Of(situation, Bench.Facts);

    [Fact]
    public void Seal_TooFewWeighings_SaysWhatIsMissing()
    {
        Assert.Equal("two weighings are needed", Of(Bromine((0, 400))).Because);
        Assert.Equal("two weighings are needed", SealVerdict.Of(Bromine((0, 400)), (Evidence?)null).Because);
        Assert.StartsWith("something was drawn between all weighings", Of(Bromine((0, 400), (100, 380)) with { Draws = [new Draw(Bench.Day.AddDays(50), null)] }).Because, StringComparison.Ordinal);
        Assert.Equal(SealState.Within, Of(Bromine((0, 400), (365, 399.5))).State);
    }

    // A loss above the closure's band, yet not so far that a failing seal is the likelier story; on a coarse balance, the same loss may be within it.
    [Fact]
    public void Seal_SomewhatAboveTheBand_IsWeighedAgain_WhereTheBalanceCanTell()
    {
        var fine = Bromine((0, 400), (183, 399), (365, 398));
        var (verdict, coarse) = (Of(fine), Of(Coarse(fine)));
        Assert.Equal(SealState.Above, verdict.State);
        Assert.False(verdict.IsAlarm);
        Assert.True(verdict.Measured!.Low > verdict.Forecast!.Value.High);
        Assert.EndsWith("in nineteen cases of twenty: weigh again soon", verdict.Because, StringComparison.Ordinal);
        Assert.StartsWith("2.001 g a year lost (", verdict.Because, StringComparison.Ordinal);
        Assert.Contains("ground-glass stopper, greased explains", verdict.Because, StringComparison.Ordinal);
        Assert.Equal(SealState.Within, coarse.State);
    }

    // Two standard errors above the band are chance in one case of forty, four hardly ever (normal law): only these count.
    [Theory]
    [InlineData(2, SealState.Within)]
    [InlineData(3, SealState.Within)]
    [InlineData(5, SealState.Above)]
    public void Seal_AboveTheBand_CountsFromFourStandardErrors(double errors, SealState state)
    {
        var band = Of(Coarse(Bromine((0, 400), (365, 399)))) switch { var v => (v.Forecast!.Value.High, Error: v.Measured!.Reach / 2) };
        var lost = (band.High + (band.Error * errors)).GramsPerYear * 365 / 365.25;
        Assert.Equal(state, Of(Coarse(Bromine((0, 400), (365, 400 - lost)))).State);
    }

    // The same of a rise.
    [Theory]
    [InlineData(1, SealState.NoChange)]
    [InlineData(3, SealState.NoChange)]
    [InlineData(5, SealState.Rising)]
    public void Seal_Rise_CountsFromFourStandardErrors(double errors, SealState state)
    {
        var error = Of(Bromine((0, 400), (365, 400))).Measured!.Reach / 2;
        Assert.Equal(state, Of(Bromine((0, 400), (365, 400 + (errors * error.GramsPerYear)))).State);
    }

    // A rise of late is one, however much was lost before; and one in all, however flat of late.
    [Fact]
    public void Seal_RisesLatelyOrInAll_IsSaid()
    {
        var (lately, inAll) = (Of(Bromine((0, 400), (200, 399), (400, 398), (500, 398.6))), Of(Bromine((0, 400), (200, 400.5), (400, 401), (500, 401))));
        Assert.True(lately.Measured!.Rate.KilogramsPerSecond > 0 && lately.Measured.Last!.Rate.KilogramsPerSecond < 0);
        Assert.Equal(SealState.Rising, lately.State);
        Assert.Equal(0, inAll.Measured!.Last!.Rate.GramsPerYear, 1e-6);
        Assert.Equal(SealState.Rising, inAll.State);
        Assert.Contains("moisture or air goes in", inAll.Because, StringComparison.Ordinal);
    }

    // Brine that should dry no further, and goes on losing, though more slowly: no one is told that a leak began when it slowed.
    [Fact]
    public void Seal_LosesLessThanBefore_IsNotSaidToHaveBegunToLeak()
    {
        var brine = Bench.Of("calcium chloride 40%", 150, "HDPE bottle 250 mL", "loose cap", 21) with { Humidity = new Fraction(0.6), Weighings = Bromine((0, 200), (60, 170), (120, 142), (180, 120)).Weighings };
        var verdict = Of(brine);
        Assert.Equal(SealState.Failing, verdict.State);
        Assert.True(verdict.Measured!.Last!.Rate < verdict.Measured.Before!.Rate);
        Assert.DoesNotContain("begun to leak", verdict.Because, StringComparison.Ordinal);
        Assert.Contains("lately 134", verdict.Because, StringComparison.Ordinal);
    }

    // Tighter than nineteen of twenty such closures.
    [Fact]
    public void Seal_LessThanTheClosureLetsGo_IsBelow()
    {
        var verdict = Of(Dry((0, 400), (365, 399.9)));
        Assert.Equal(SealState.Below, verdict.State);
        Assert.True(verdict.Measured!.High < verdict.Forecast!.Value.Low);
        Assert.EndsWith("tighter than most, or something is taken up", verdict.Because, StringComparison.Ordinal);
    }

    // Where a way out could not be computed, no band is there to be above of: what was lost is said, and no alarm given on a guess.
    [Fact]
    public void Seal_WhereTheWaysOutAreNotKnown_SaysSo()
    {
        var naphthalene = Bench.Of("naphthalene", 100, "HDPE bottle 250 mL", "HDPE screw cap", 20) with { Weighings = Bromine((0, 200), (180, 199), (360, 198)).Weighings };
        Assert.False(Forecast.Of(naphthalene with { Weighings = [] }, Bench.Facts, Bench.Day).IsComplete);
        var verdict = Of(naphthalene);
        Assert.Contains("what the closure lets go could not be computed in full", verdict.Because, StringComparison.Ordinal);
        Assert.NotEqual(SealState.Failing, verdict.State);
    }

    // Ten grams and more to the gram, less to the milligram; what rounds to nothing is no negative nothing.
    [Theory]
    [InlineData(12.34, "12")]
    [InlineData(-12.34, "-12")]
    [InlineData(9.8764, "9.876")]
    [InlineData(0.0004, "0")]
    [InlineData(-0.0004, "0")]
    [InlineData(-0.0006, "-0.001")]
    public void Grams_AreSaidShortly(double gramsAYear, string words) => Assert.Equal(words, SealVerdict.Grams(MassRate.FromGramsPerYear(gramsAYear)));

    // Ten weighings of an exact line: the slope is that of the line (ordinary least squares).
    [Fact]
    public void Measured_ExactLine_IsItsSlope() =>
        Gen.Select(Gen.Double[0, 50], Gen.Int[2, 12]).Sample((perYear, count) =>
        {
            var w = Enumerable.Range(0, count).Select(i => new WeighIn(Bench.Day.AddDays(i * 40), Mass.FromGrams(500 - (perYear * i * 40 / 365.25)), Mass.FromGrams(0.01))).ToList();
            return Math.Abs(MeasuredLoss.Of(w, [], default)!.Rate.GramsPerYear - perYear) < 1e-6;
        }, iter: 100);
}
