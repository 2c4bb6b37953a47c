using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>Results do not depend on the size of the steps: halving them moves none by half a per cent of the start, on no day.</summary>
public sealed class StepSizeTests
{
    private const double HalfAPercent = 0.005;

    // Later dates of a strength that all but settles hang on next to nothing.
    private static readonly Span Century = Span.FromDays(36525);

    // Every day of the first two months, and every week up to twenty-five years.
    private static readonly Span[] Days = [.. Enumerable.Range(1, 60).Concat(Enumerable.Range(9, 1300).Select(w => 7 * w)).Select(d => Span.FromDays(d))];

    private static readonly string[] Vessels = ["ground-joint bottle 250 mL", "HDPE bottle 250 mL", "amber glass bottle 500 mL", "glass vial 20 mL", "PP bottle 250 mL"];

    private static readonly string[] Closures =
        ["ground-glass stopper, dry", "screw cap, PTFE-faced liner", "plain polypropylene screw cap", "loose cap", "none", "screw cap, polyethylene cone liner", "rubber bung"];

    [Theory]
    [InlineData("bromine")]
    [InlineData("iodine")]
    [InlineData("acetone")]
    [InlineData("toluene")]
    [InlineData("water")]
    [InlineData("mercury")]
    [InlineData("phosphorus (white)")]
    [InlineData("diethyl ether")]
    [InlineData("ethanol 70%")]
    [InlineData("isopropyl alcohol 70%")]
    [InlineData("chlorine water")]
    [InlineData("bromine water")]
    [InlineData("acetic acid 80%")]
    [InlineData("hydrochloric acid 37%")]
    [InlineData("ammonia solution 25%")]
    [InlineData("nitric acid 65%")]
    [InlineData("hydrogen peroxide 30%")]
    [InlineData("hydrofluoric acid 48%")]
    [InlineData("sulfuric acid 98%")]
    [InlineData("sodium hydroxide 50%")]
    [InlineData("tincture of iodine")]
    [InlineData("iodine 0.1 M")]
    [InlineData("ethylene glycol 50%")]
    [InlineData("ammonia buffer pH 10")]
    [InlineData("ammonia solution 35%")]
    [InlineData("Lugol's iodine (strong)")]
    [InlineData("bleach")]
    [InlineData("formalin")]
    [InlineData("hydriodic acid 57%")]
    [InlineData("aqua regia")]
    [InlineData("hand rub")]
    public void HalfTheStep_MovesNeitherMassNorStrength_ByHalfAPercent(string content)
    {
        foreach (var vessel in Vessels)
        {
            foreach (var closure in Closures)
            {
                var situation = Bench.Of(content, 10, vessel, closure, 20) with { DailySwing = new TemperatureChange(6), SeasonalSwing = new TemperatureChange(10) };
                var course = new LossCourse(situation, Bench.Facts, YearNetwork.Of(situation, Bench.Facts), moisture: MoistureUptake.Of(situation, Bench.Facts))
                {
                    Deciding = DecidingPart.Of(situation.Content, Bench.Facts),
                };
                var (coarse, fine) = (Trajectory.Follow(course), Trajectory.Follow(course, 0.5));
                AreTheSame(coarse.Low, fine.Low, $"{vessel}, {closure}, low");
                AreTheSame(coarse.Expected, fine.Expected, $"{vessel}, {closure}, expected");
                AreTheSame(coarse.High, fine.High, $"{vessel}, {closure}, high");
            }
        }
    }

    [Theory]
    [InlineData("sulfuric acid 98%")]
    [InlineData("hydrochloric acid 37%")]
    [InlineData("ammonia solution 25%")]
    [InlineData("hydrofluoric acid 48%")]
    [InlineData("ethanol 96%")]
    public void HalfTheStep_MovesNoDateOfStrength_ByHalfAPercent(string content)
    {
        foreach (var (vessel, closure) in Vessels.SelectMany(v => Closures.Select(c => (v, c))))
        {
            var situation = Bench.Of(content, 100, vessel, closure, 20) with { Vessel = Bench.Ware.FindVessel(vessel)! with { Volume = new Volume(0.0005) } };
            var network = YearNetwork.Of(situation, Bench.Facts);
            var course = new LossCourse(situation, Bench.Facts, network, moisture: MoistureUptake.Of(situation, Bench.Facts)) { Deciding = DecidingPart.Of(situation.Content, Bench.Facts) };
            Assert.NotNull(course.Deciding);
            var (coarse, fine) = (Strength(course, network, 1), Strength(course, network, 0.5));
            foreach (var left in (double[])[0.99, 0.98, 0.95, 0.9, 0.7, 0.5])
            {
                var (a, b) = (coarse.TimeTo(new Fraction(left)), fine.TimeTo(new Fraction(left)));
                if (b is not { } then || then > Century)
                    continue;
                Assert.True(a is { } first && Math.Abs((first - then).Days) <= Math.Max(0.1, HalfAPercent * then.Days), $"{vessel}, {closure}: {left:P0} of the strength after {a?.Days} days, with half the step {then.Days}");
            }
        }
    }

    private static StrengthOverTime Strength(LossCourse course, YearNetwork network, double fineness) =>
        new(Trajectory.Follow(course, fineness).Expected, network.SeasonFrom(Bench.Day), null, default);

    // A share above 1 is one that has risen: what half a per cent of it is rises with it.
    private static void AreTheSame(Trajectory coarse, Trajectory fine, string of)
    {
        foreach (var day in Days)
        {
            var (a, b) = (coarse.After(day) / coarse.Start, fine.After(day) / fine.Start);
            Assert.True(Math.Abs(a - b) <= HalfAPercent * Math.Max(1, b), $"{of}, after {day.Days} days: {a:P2} left, with half the step {b:P2}");
            (a, b) = (coarse.Strength(day).Value, fine.Strength(day).Value);
            Assert.True(Math.Abs(a - b) <= HalfAPercent * Math.Max(1, b), $"{of}, after {day.Days} days: strength {a:P2}, with half the step {b:P2}");
        }
    }
}
