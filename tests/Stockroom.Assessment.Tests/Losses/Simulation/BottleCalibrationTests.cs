using Stockroom.Assessment.Losses;
using Stockroom.Assessment.Losses.WeighIns;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses.Simulation;

/// <summary>
/// Whether the band keeps what it promises, over simulated bottles. STOCKROOM_BOTTLES says how many (1,000 for the full count); without it
/// fewer are taken. Always the same ones.
/// </summary>
public sealed class BottleCalibrationTests
{
    private static int Bottles => int.TryParse(Environment.GetEnvironmentVariable("STOCKROOM_BOTTLES"), out var n) ? n : 100;

    private static readonly DateOnly Start = new(2024, 7, 1);

    [Fact]
    public void Band_OnceThreeWeighingsExist_HoldsTheTruthNineTimesOfTen()
    {
        var counts = Count(Bottles, forgetful: true);
        var words = $"{counts.Held} of {counts.Asked} bands held the coming year's loss, {counts.HeldClean} of {counts.AskedClean} without a forgotten draw, {counts.HeldForgotten} of {counts.AskedForgotten} with one";
        TestContext.Current.TestOutputHelper!.WriteLine(words);
        Assert.True(Share(counts.Held, counts.Asked) is >= 0.80 and <= 0.95, words);
    }

    // Honest: no leak, nothing taken out unbooked. A bottle counts once, however often it is weighed.
    [Fact]
    public void Alarm_AmongHonestBottles_IsFalseInLessThanOneInAHundred()
    {
        var (alarms, forgotten) = (new List<int>(), 0);
        for (var seed = 0; seed < Bottles; seed++)
        {
            if (Alarmed(seed, null, null).Count > 0)
                alarms.Add(seed);
            forgotten += Alarmed(seed, null, 3).Any(n => n > 4) ? 1 : 0;
        }

        var words = $"{alarms.Count} false alarms in {Bottles} honest bottles ({string.Join(' ', alarms)}); with a forgotten draw before the fourth weighing, {forgotten} still ring two weighings later";
        TestContext.Current.TestOutputHelper!.WriteLine(words);
        Assert.True(alarms.Count < 0.01 * Bottles || alarms.Count <= 1, words);
    }

    // Leaks that the balance can see: a leak's extra loss between two weighings stands out from its step by ten.
    [Fact]
    public void Alarm_SealBeginsToLeakTenfold_RingsByTheSecondWeighingThatCouldShowIt()
    {
        var (late, shown, first) = (new List<int>(), 0, 0);
        for (var seed = 0; seed < Bottles; seed++)
        {
            var could = new List<int>();
            var alarms = Alarmed(seed, 2, null, could);
            if (could.Count < 2)
                continue;
            shown++;
            first += alarms.Contains(could[0]) ? 1 : 0;
            if (!alarms.Contains(could[0]) && !alarms.Contains(could[1]))
                late.Add(seed);
        }

        var words = $"{late.Count} of {shown} leaks that the balance could show were missed by the second such weighing ({string.Join(' ', late)}); {first} were flagged by the first";
        TestContext.Current.TestOutputHelper!.WriteLine(words);
        Assert.True(shown > Bottles / 3 && late.Count <= 0.01 * shown, words);
    }

    // Numbers of the weighings (the first is 1) after which an alarm rang.
    private static List<int> Alarmed(int seed, int? leakAfter, int? drawAfter, List<int>? could = null)
    {
        var bottle = new SimulatedBottle(seed);
        var weighings = new List<WeighIn>();
        var alarms = new List<int>();
        var before = 0.0;
        for (var n = 1; n <= 6 && bottle.Grams > 0.2 * bottle.StartGrams; n++)
        {
            weighings.Add(Read(bottle));
            if (bottle.Leak > 1 && (bottle.LostGrams - before) * 0.9 > 10 * bottle.ReadabilityGrams)
                could?.Add(n);
            before = bottle.LostGrams;
            if (SealVerdict.Of(Situation(bottle, weighings), Bench.Facts).IsAlarm)
                alarms.Add(n);
            if (n == leakAfter)
                bottle.Leak = 10;
            if (n == drawAfter)
                bottle.DrawAndForget();
            bottle.Wait(40 + (int)(80 * bottle.Chance()));
        }

        return alarms;
    }

    private sealed record Counts(int Held, int Asked, int HeldClean, int AskedClean, int HeldForgotten, int AskedForgotten);

    private static Counts Count(int bottles, bool forgetful)
    {
        var (held, asked, heldClean, askedClean) = (0, 0, 0, 0);
        for (var seed = 0; seed < bottles; seed++)
        {
            var bottle = new SimulatedBottle(seed);
            if (bottle.Chance() < 0.05)
                bottle.Leak = 30;
            var draws = forgetful && bottle.Chance() < 0.1;
            var when = 1 + (int)(5 * bottle.Chance());
            var weighings = new List<WeighIn>();
            for (var n = 0; n < 6; n++)
            {
                weighings.Add(Read(bottle));
                if (n >= 2 && bottle.Grams > 0.3 * bottle.StartGrams)
                {
                    var forecast = Forecast.Of(Situation(bottle, weighings), Bench.Facts, Start.AddDays(bottle.Day));
                    var truth = bottle.LossOfTheComingYear();
                    var rate = forecast.LossRate!.Value;
                    var within = rate.Low.GramsPerYear <= truth && truth <= rate.High.GramsPerYear;
                    asked++;
                    held += within ? 1 : 0;
                    if (!draws || n < when)
                    {
                        askedClean++;
                        heldClean += within ? 1 : 0;
                    }
                }

                bottle.Wait(40 + (int)(80 * bottle.Chance()));
                if (draws && n + 1 == when)
                    bottle.DrawAndForget();
            }
        }

        return new Counts(held, asked, heldClean, askedClean, held - heldClean, asked - askedClean);
    }

    internal static WeighIn Read(SimulatedBottle bottle) =>
        new(Start.AddDays(bottle.Day), Mass.FromGrams(bottle.Weigh()), Mass.FromGrams(bottle.ReadabilityGrams));

    internal static Situation Situation(SimulatedBottle bottle, IReadOnlyList<WeighIn> weighings) =>
        Bench.Of(bottle.Liquid.Name, bottle.StartGrams, "glass reagent bottle 250 mL", "screw cap, PTFE-faced liner", SimulatedBottle.StatedMean) with
        {
            AmountOn = Start,
            DailySwing = new TemperatureChange(SimulatedBottle.StatedDay),
            SeasonalSwing = new TemperatureChange(bottle.BookKnowsSeasons ? SimulatedBottle.StatedSeasons : 0),
            Weighings = [.. weighings],
        };

    private static double Share(int part, int whole) => whole > 0 ? (double)part / whole : 0;
}
