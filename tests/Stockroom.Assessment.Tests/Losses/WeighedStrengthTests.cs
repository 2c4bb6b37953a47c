using Stockroom.Assessment.Losses;
using Stockroom.Assessment.Losses.WeighIns;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>What weighings make of the amount and the strength left.</summary>
public sealed class WeighedStrengthTests
{
    private static WeighIn At(int day, double grams, double readability) => new(Bench.Day.AddDays(day), Mass.FromGrams(grams), Mass.FromGrams(readability));

    private static Situation Ammonia => Bench.Of("ammonia solution 25%", 200, "ground-joint bottle 250 mL", "ground-glass stopper, dry", 20);

    // Two integrators of the same rates, one stepped by the midpoint, one by Bogacki and Shampine: the same mass is left.
    [Fact]
    public void Strength_AfterAWhile_LeavesTheMassOfTheCourse()
    {
        var network = YearNetwork.Of(Ammonia, Bench.Facts);
        var course = new LossCourse(Ammonia, Bench.Facts, network, weighable: true);
        var span = new Span(8 * Span.SecondsPerYear);
        var left = Trajectory.Follow(course).Expected.After(span);
        var content = Composition.After(Ammonia.Content, course, span, 1, Ammonia.Amount);
        var water = (double)content.PercentOf("water") / 100;

        // Water goes far slower than the gas; what is left of the mass is water and gas in the shares found.
        var gas = (double)content.PercentOf("ammonia solution") / 100;
        Assert.Equal(1, water + gas, 1e-9);
        course.Evaluate([.. content.Parts.Select(p => left.Kilograms * (double)p.Percent / 100)]);
        var rate = Enumerable.Range(0, 2).Sum(i => course.Rate(i, BandEnd.Expected, 1));
        var lostInADay = left.Kilograms - Trajectory.Follow(course).Expected.After(new Span(span.Seconds + (30 * 86400))).Kilograms;
        Assert.Equal(lostInADay / (30 * 86400), rate, 0.03 * rate);
        Assert.True(gas < 0.24);
    }

    // A solution that lost a fifth of its ammonia loses more slowly from then on; the rate is that of the day of the last weighing.
    [Fact]
    public void Rate_SolutionGrownWeak_IsThatOfTheWeakOne()
    {
        var weighed = Ammonia with { Weighings = [At(0, 410, 0.01), At(180, 404, 0.01), At(365, 398.6, 0.01), At(550, 393.8, 0.01)] };
        var forecast = Forecast.Of(weighed, Bench.Facts, Bench.Day.AddDays(550));
        Assert.True(forecast.Weighed!.Start.Content.PercentOf("ammonia solution") < 21);
        Assert.InRange(forecast.LossRate!.Value.Expected.GramsPerYear, 7, 10.5);
    }

    // A balance of 1 g says nothing of a loss of milligrams: the amount left is the amount known, not what rounding makes of it.
    [Fact]
    public void Left_CoarseBalanceAndASmallLoss_IsWhatTheCourseSays()
    {
        var iodine = Bench.Of("iodine", 100, "ground-joint bottle 100 mL", "ground-glass stopper, dry", 20) with { Weighings = [At(0, 205, 1), At(100, 204, 1), At(200, 204, 1)] };
        var left = Forecast.Of(iodine, Bench.Facts, Bench.Day.AddDays(200)).Remaining!.Value;
        Assert.Equal(100, left.Expected.Grams, 0.05);
        Assert.True(left.Low.Grams > 99.5);
    }

    // Two readings to a centigram leave the amount open by as much (1.645 root two sigma and the air's share), whatever the course says.
    [Fact]
    public void Left_LossTheBalanceShows_IsOpenByTheReadings()
    {
        var hexane = Bench.Of("n-hexane", 260, "ground-joint bottle 500 mL", "ground-glass stopper, dry", 19) with { Weighings = [At(0, 500, 0.01), At(120, 497.5, 0.01), At(240, 495, 0.01)] };
        var left = Forecast.Of(hexane, Bench.Facts, Bench.Day.AddDays(240)).Remaining!.Value;
        Assert.Equal(255, left.Expected.Grams, 0.02);
        Assert.InRange((left.High - left.Low).Grams, 2 * 1.6 * Math.Sqrt(2) * 0.01, 0.12);
    }

    // What was taken out unbooked is out: the readings stand against the course and win.
    [Fact]
    public void Left_DrawnAndForgotten_IsByTheReadings()
    {
        var bromine = Bench.Of("bromine", 100, "ground-joint bottle 250 mL", "ground-glass stopper, dry", 20) with
        {
            Weighings = [At(0, 400, 0.01), At(180, 399, 0.01), At(360, 388, 0.01), At(540, 387, 0.01)],
        };
        Assert.Equal(87, Forecast.Of(bromine, Bench.Facts, Bench.Day.AddDays(540)).Remaining!.Value.Expected.Grams, 0.1);
    }

    // Naphthalene goes through polyethylene (common practice: mothballs are smelt through the bag), how fast no table says; past the cap next to nothing
    // goes. What three intervals on the balance agree on is followed all the same.
    [Fact]
    public void Rate_ThatThePhysicsHardlyKnows_IsThatOfTheBalance()
    {
        var naphthalene = Bench.Of("naphthalene", 100, "HDPE bottle 250 mL", "HDPE screw cap", 20);
        Assert.True(Forecast.Of(naphthalene, Bench.Facts, Bench.Day).LossRate!.Value.High.GramsPerYear < 0.1);
        var weighed = naphthalene with { Weighings = [At(0, 140, 0.01), At(90, 139, 0.01), At(180, 138, 0.01), At(270, 137, 0.01)] };
        var forecast = Forecast.Of(weighed, Bench.Facts, Bench.Day.AddDays(270));
        Assert.Equal(365.25 / 90, forecast.LossRate!.Value.Expected.GramsPerYear, 0.2);
        Assert.InRange(forecast.LossRate.Value.Low.GramsPerYear, 3, 365.25 / 90);
        Assert.Equal(97, forecast.Remaining!.Value.Expected.Grams, 0.1);
    }

    // Less than the closure lets go is no sign that it fails, however far from what was expected.
    [Fact]
    public void Seal_LosesFarLessThanExpected_IsNoAlarm()
    {
        var xylene = Bench.Of("xylene", 250, "HDPE bottle 500 mL", "HDPE screw cap", 20);
        var expected = Forecast.Of(xylene, Bench.Facts, Bench.Day).LossRate!.Value.Expected.GramsPerYear;
        foreach (var share in new[] { 0.05, 0.1, 0.2, 0.3, 0.5 })
        {
            var less = xylene with { Weighings = [At(0, 305, 0.1), At(150, 305 - (share * expected * 150 / 365.25), 0.1)] };
            Assert.False(SealVerdict.Of(less, Bench.Facts).IsAlarm);
        }
    }
}
