using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>The strength over time against what can be worked out by hand: a part that leaves by a law of its own, and one that decomposes.</summary>
public sealed class StrengthOverTimeTests
{
    // Within a minute of a date nothing is told apart.
    private const double Minute = 60;

    private static readonly Span Tau = Span.FromDays(1000);

    private static DecompositionLaw Peroxide => Bench.Facts.Decomposition(Bench.Facts.Catalogue["hydrogen peroxide"])!;

    private static DecompositionLaw Hypochlorite => Bench.Facts.Decomposition(Bench.Facts.Catalogue["sodium hypochlorite"])!;

    private static RateConstant Each(Span span) => new(1 / span.Seconds);

    // A tenth of a solution fades by exp(-t/tau) from a whole that stays, up to four tau; growing where tau is negative.
    private static Trajectory Fading(double tau) => new([.. Enumerable.Range(0, 9).Select(i => new Trajectory.Point(i * Math.Abs(tau) / 2, 1, 0))])
    {
        Deciding = new Trajectory([.. Enumerable.Range(0, 9).Select(i => i * Math.Abs(tau) / 2).Select(t => new Trajectory.Point(t, 0.1 * Math.Exp(-t / tau), 0.1 / tau * Math.Exp(-t / tau)))]),
    };

    private static StrengthOverTime Leaves(DecompositionLaw? law = null, RateConstant rate = default) => new(Fading(Tau.Seconds), default, law, rate);

    [Theory]
    [InlineData(0.9)]
    [InlineData(0.5)]
    [InlineData(0.1)]
    [InlineData(0.02)]
    public void WhatFadesByALaw_IsThereAtItsLogarithm(double left)
    {
        var time = Leaves().TimeTo(new(left))!.Value;
        Assert.Equal(-Math.Log(left) * Tau.Seconds, time.Seconds, Minute);
        Assert.Equal(left, Leaves().Left(time).Value, 1e-6);
    }

    [Fact]
    public void Start_IsWhole()
    {
        Assert.Equal(new Span(0), Leaves().TimeTo(new(1)));
        Assert.Equal(new Span(0), Leaves().TimeTo(new(1.2)));
        Assert.Equal(1, Leaves().Left(default).Value);
        Assert.Equal(1, Leaves(Peroxide, Each(Tau)).Left(Span.FromDays(-5)).Value);
    }

    // Where the course ends the composition stays: no date for less.
    [Fact]
    public void LessThanItEndsWith_IsNeverReached()
    {
        Assert.Null(Leaves().TimeTo(new(Math.Exp(-4.01))));
        Assert.Equal(Math.Exp(-4), Leaves().Left(Tau * 9).Value, 1e-9);
    }

    // Two losses in proportion add up: exp(-t/tau) exp(-kt). Past the end of the course only the second goes on.
    [Theory]
    [InlineData(0.5)]
    [InlineData(0.05)]
    [InlineData(0.01)]
    [InlineData(1e-4)]
    public void LeavingAndDecomposing_BothInProportion_Add(double left)
    {
        var k = Each(Tau * 5);
        var together = -Math.Log(left) / (1 + 0.2) * Tau.Seconds;
        var expected = together < 4 * Tau.Seconds ? together : (-Math.Log(left) - 4) * 5 * Tau.Seconds;
        Assert.Equal(expected, Leaves(Peroxide, k).TimeTo(new(left))!.Value.Seconds, Minute);
        Assert.Equal(left, Leaves(Peroxide, k).Left(new Span(expected)).Value, 1e-6);
    }

    // Second order: 1/(1 + kt) is left. A half after 1/k, a tenth after 9/k.
    [Theory]
    [InlineData(0.5, 1)]
    [InlineData(0.1, 9)]
    public void Hypochlorite_Alone_FallsBySecondOrder(double left, double times)
    {
        var alone = new StrengthOverTime(null, default, Hypochlorite, Each(Tau));
        Assert.Equal((Tau * times).Seconds, alone.TimeTo(new(left))!.Value.Seconds, Minute);
        Assert.Equal(left, alone.Left(Tau * times).Value, 1e-9);
    }

    // Water that leaves makes the rest stronger; that is not set against what decomposes (to err to the early side), and shown where nothing does.
    [Fact]
    public void StrengthThatRises_IsNotSetAgainstWhatDecomposes()
    {
        var rises = new StrengthOverTime(Fading(-Tau.Seconds), default, null, default);
        Assert.Equal(Math.E, rises.Left(Tau).Value, 1e-6);
        Assert.Null(rises.TimeTo(new(0.9)));
        var decomposes = new StrengthOverTime(Fading(-Tau.Seconds), default, Peroxide, Each(Tau * 2));
        Assert.Equal(Math.Exp(-0.5), decomposes.Left(Tau).Value, 1e-6);
        Assert.Equal(2 * Math.Log(2) * Tau.Seconds, decomposes.TimeTo(new(0.5))!.Value.Seconds, Minute);
    }

    // Up to the last weighing the strength goes evenly to what the weighings made of it; from there the course goes on.
    [Theory]
    [InlineData(0.9, 50)]
    [InlineData(0.8, 100)]
    [InlineData(0.4, 793.1)]
    public void Weighed_GoesEvenlyToTheLastWeighing_AndOnByTheCourse(double left, double days)
    {
        var weighed = new StrengthOverTime(Fading(Tau.Seconds), default, null, default) { Before = Span.FromDays(100), Begins = new(0.8) };
        Assert.Equal(left, weighed.Left(Span.FromDays(days)).Value, 1e-4);
        Assert.Equal(days, weighed.TimeTo(new(left))!.Value.Days, 0.1);
        Assert.Equal(1, weighed.Left(Span.FromDays(-10)).Value);
    }

    // What the weighings found stronger is not set against what decomposes either; what they found weaker adds to it.
    [Theory]
    [InlineData(1.2, 1)]
    [InlineData(0.8, 0.9)]
    public void Weighed_AndDecomposing_IsNeverStrongerThanDecompositionAlone(double begins, double halfway)
    {
        var weighed = new StrengthOverTime(Fading(Tau.Seconds), default, Peroxide, Each(Tau)) { Before = Span.FromDays(100), Begins = new(begins) };
        Assert.Equal(halfway * Math.Exp(-0.05), weighed.Left(Span.FromDays(50)).Value, 1e-9);
        Assert.Equal(Math.Min(1, begins) * Math.Exp(-0.1), weighed.Left(Span.FromDays(100)).Value, 1e-9);
    }

    // Weighings that found it weaker, and nothing that moves on: what decomposes is counted from the first day.
    [Fact]
    public void Weighed_WithNoCourse_DecomposesFromTheFirstDay()
    {
        var weighed = new StrengthOverTime(null, default, Peroxide, Each(Tau)) { Before = Span.FromDays(100), Begins = new(0.8) };
        Assert.Equal(Math.Log(0.8 / 0.4) * Tau.Days, weighed.TimeTo(new(0.4))!.Value.Days, 0.1);
    }

    // With a season, with weighings, with both kinds of loss: what is left on the day that is named is what was asked for.
    [Theory]
    [InlineData(0, 1, false)]
    [InlineData(200, 0.85, false)]
    [InlineData(0, 1, true)]
    [InlineData(200, 0.85, true)]
    public void OnTheDayNamed_SoMuchIsLeft(double before, double begins, bool decomposes)
    {
        var season = new Season(new Fraction(1), new DateOnly(2026, 4, 1), 7);
        var strength = new StrengthOverTime(Fading(Tau.Seconds), season, decomposes ? Peroxide : null, decomposes ? Each(Tau * 3) : default) { Before = Span.FromDays(before), Begins = new(begins) };
        foreach (var left in (double[])[0.95, 0.8, 0.6, 0.3])
            Assert.Equal(left, strength.Left(strength.TimeTo(new(left))!.Value).Value, 1e-5);
    }

    // A loss that waits for the summer is not there in spring: a season's course on the calendar, decomposition by the day.
    [Fact]
    public void Season_MovesWhatLeaves_NotWhatDecomposes()
    {
        var winter = new DateOnly(2026, 1, 16);
        var quarter = Span.FromDays(90);
        var leaves = new StrengthOverTime(Fading(Tau.Seconds), new Season(new Fraction(2), winter, 7), null, default);
        Assert.True(leaves.Left(quarter).Value > Math.Exp(quarter / Tau * -1) + 0.03);
        var decomposes = new StrengthOverTime(null, new Season(new Fraction(2), winter, 7), Peroxide, Each(Tau));
        Assert.Equal(Math.Exp(quarter / Tau * -1), decomposes.Left(quarter).Value, 1e-9);
    }

    // Beyond two thousand years no date means anything.
    [Theory]
    [InlineData(0.5, true)]
    [InlineData(0.02, false)]
    public void DatesBeyondAllReason_AreNone(double left, bool dated)
    {
        var slow = new StrengthOverTime(Fading(Span.FromYears(600).Seconds), default, null, default);
        Assert.Equal(dated, slow.TimeTo(new(left)) is not null);
    }

    // A course without a part of its own says nothing of the strength.
    [Fact]
    public void CourseWithoutADecidingPart_LeavesTheStrength()
    {
        var whole = new StrengthOverTime(new Trajectory([new(0, 1, 1e-9), new(1e8, 0.9, 1e-9)]), default, null, default);
        Assert.Equal(1, whole.Left(new Span(1e8)).Value);
        Assert.Null(whole.TimeTo(new(0.95)));
    }
}
