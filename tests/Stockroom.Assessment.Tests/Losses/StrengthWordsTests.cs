using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>What is said of a strength, over courses made up by hand.</summary>
public sealed class StrengthWordsTests
{
    private const double Year = Span.SecondsPerYear;

    private static readonly Reach Never = new("ammonia solution below 10 %", new Fraction(0.4), null, null, null);

    private static Situation Ammonia => Bench.Of("ammonia solution 25%", 200, "glass reagent bottle 250 mL", "loose cap", 20);

    // A quarter of the whole to begin with; so much of whole and strength is left after ten years, each falling on at its last pace, or not at all.
    private static Band<Trajectory> Course(double left, double strength, double wholePace = 0.1, double partPace = 0.2)
    {
        var part = 0.25 * left * strength;
        var course = new Trajectory([new(0, 1, 0.1 / Year), new(10 * Year, left, wholePace * left / Year)])
        {
            Deciding = new Trajectory([new(0, 0.25, 0.02 / Year), new(10 * Year, part, partPace * part / Year)]),
        };
        return new(course, course, course);
    }

    private static string Words(Band<Trajectory>? course, Reach? below = null, bool takesUp = false, double begins = 1, bool weighed = false, Situation? situation = null, DateOnly? since = null)
    {
        var bottle = situation ?? Ammonia;
        var part = bottle.Content.Parts.Single(p => p.Substance.Name == "ammonia solution");
        return new StrengthWords(bottle, Bench.Facts, part, since ?? Bench.Day, takesUp) { Begins = new(begins), IsWeighed = weighed }.Because(null, course, below);
    }

    // Half a per cent either way is no trend.
    [Theory]
    [InlineData(0.996, "ammonia solution leaves about as fast as the rest")]
    [InlineData(1.004, "ammonia solution leaves about as fast as the rest")]
    [InlineData(0.9, "ammonia solution leaves faster than the rest")]
    [InlineData(1.1, "the rest leaves faster than ammonia solution: its strength rises")]
    public void Trend_IsThatOfTheEnd(double strength, string words) =>
        Assert.Equal($"25 % ammonia solution at 20 degrees C since 2026-01-01; {words}", Words(Course(0.5, strength)));

    [Fact]
    public void Trend_WithMoisture_NamesBoth() =>
        Assert.Contains("what leaves of it and the moisture it takes up from the room thin the ammonia solution", Words(Course(0.9, 0.8), takesUp: true), StringComparison.Ordinal);

    // Where both fade in proportion, or nothing moves, it settles: 0.8 of 25 % is 20 %.
    [Theory]
    [InlineData(0.1, 0.1, true)]
    [InlineData(0.1, 0.2, false)]
    [InlineData(0, 0, true)]
    public void Settles_WherePartAndWholeGoTogether(double wholePace, double partPace, bool settles)
    {
        var words = Words(Course(0.5, 0.8, wholePace, partPace), Never);
        Assert.Equal(settles, words.Contains("; it settles near 20 %", StringComparison.Ordinal));
        Assert.Equal(settles, words.Contains("never below use: near 20 % what leaves is as strong as what stays", StringComparison.Ordinal));
    }

    // Why a limit is never reached: it rises, the vessel is empty before (below 18 per cent of the start), or it takes longer than is followed.
    [Theory]
    [InlineData(0.5, 1.1, "its strength does not fall")]
    [InlineData(0.5, 1.0, "its strength does not fall")]
    [InlineData(0.1, 0.5, "the vessel is all but empty at 12.5 %")]
    [InlineData(0.17, 0.5, "the vessel is all but empty at 12.5 %")]
    [InlineData(0.5, 0.5, "it falls no further than 40 % of its strength within 500 years")]
    public void Limit_NeverReached_SaysWhy(double left, double strength, string words) =>
        Assert.EndsWith($"never below use: {words}", Words(Course(left, strength), Never), StringComparison.Ordinal);

    // Weighings that found it at four fifths: 20 % then, and a tenth less of that at the end.
    [Fact]
    public void Weighed_SaysWhatTheWeighingsMadeOfIt()
    {
        var words = Words(Course(0.5, 0.9, 0.1, 0.1), Never, begins: 0.8, weighed: true, situation: Ammonia with { AmountOn = Bench.Day.AddDays(90) });
        Assert.Contains("; by the weighings 20 % on 2026-04-01", words, StringComparison.Ordinal);
        Assert.Contains("settles near 18 %", words, StringComparison.Ordinal);
    }

    [Fact]
    public void FilledBeforeTheAmountWasKnown_SaysWhatIsTaken()
    {
        Assert.EndsWith("as if 200 g had been in it from the start", Words(Course(0.5, 0.9), since: Bench.Day.AddDays(-30)), StringComparison.Ordinal);
        Assert.DoesNotContain("as if", Words(Course(0.5, 0.9)), StringComparison.Ordinal);
    }

    // The gas leaves by its own pressure, so that is where the figure comes from, not the water's.
    [Fact]
    public void Source_IsThatOfThePartItself()
    {
        var parts = Ammonia.Content.Parts;
        var (own, water) = (new StrengthWords(Ammonia, Bench.Facts, parts.Single(p => p.Substance.Name == "ammonia solution"), Bench.Day, false).VapourSource, new StrengthWords(Ammonia, Bench.Facts, parts.Single(p => p.Substance.Name == "water"), Bench.Day, false).VapourSource);
        var vapours = new LossState(Ammonia, Bench.Facts).Vapour;
        Assert.Equal(vapours.Single(v => v.Part.Name == "ammonia solution").Pressure.Provenance, own);
        Assert.Equal(vapours.Single(v => v.Part.Name == "water").Pressure.Provenance, water);
        Assert.NotEqual(own, water);
    }
}
