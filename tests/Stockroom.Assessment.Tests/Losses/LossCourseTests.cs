using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>What every course keeps to, and those that can be worked out by hand.</summary>
public sealed class LossCourseTests
{
    private static readonly string[] Contents = ["bromine", "acetone", "iodine", "water", "ethanol 70%", "hydrochloric acid 37%", "ammonia solution 25%", "sulfuric acid 98%", "hydrogen peroxide 30%", "salt solution 10%"];

    private static readonly string[] Closures = ["ground-glass stopper, dry", "screw cap, PTFE-faced liner", "loose cap", "none", "vented cap"];

    private static LossCourse Course(Situation s) => new(s, Bench.Facts, YearNetwork.Of(s, Bench.Facts), moisture: MoistureUptake.Of(s, Bench.Facts)) { Deciding = DecidingPart.Of(s.Content, Bench.Facts) };

    private static Band<Trajectory> Follow(Situation s, double fineness = 1) => Trajectory.Follow(Course(s), fineness);

    private static Trajectory[] Ends(Band<Trajectory> course) => [course.Low, course.Expected, course.High];

    private static double Left(Trajectory course, Span time) => course.After(time) / course.Start;

    // Time goes on; a single content only dwindles; a course ends at nine hundredths of the start, at its horizon, or where nothing moves any more.
    [Fact]
    public void Courses_GoForward_AndStopAtNineHundredths()
    {
        foreach (var (content, closure) in Contents.SelectMany(c => Closures.Select(k => (c, k))))
        {
            var situation = Bench.Of(content, 150, "glass reagent bottle 250 mL", closure, 22) with { DailySwing = new TemperatureChange(4), SeasonalSwing = new TemperatureChange(8) };
            foreach (var course in Ends(Follow(situation)))
            {
                var of = $"{content} under {closure}";
                Span[] times = [.. course.Times];
                Assert.True(times.Zip(times.Skip(1)).All(t => t.First < t.Second), $"{of}: time goes back");
                Assert.True(situation.Content.Pure is null || times.Zip(times.Skip(1)).All(t => course.After(t.First) > course.After(t.Second)), $"{of}: a pure content grows");
                var last = Left(course, times[^1]);
                Assert.True(Math.Abs(last - 0.09) < 1e-6 || (last > 0.09 && (times[^1].Seconds >= Trajectory.Horizon || course.Last.Rate * Trajectory.Horizon < 0.02 * course.Start.Kilograms)), $"{of}: ends at {last}");
                Assert.Equal(DecidingPart.Of(situation.Content, Bench.Facts) is null || situation.Content.Pure is not null, course.Deciding is null);
            }
        }
    }

    // A step of the pair of Bogacki and Shampine is off by the third power of its length (Appl. Math. Lett. 2 (1989) 321), and a panel is a share of
    // the whole: a tenth of the length, ten times the points.
    [Theory]
    [InlineData("acetone")]
    [InlineData("hydrochloric acid 10%")]
    [InlineData("nitric acid 65%")]
    public void FinerCourse_HasAsManyMorePoints(string content)
    {
        var situation = Bench.Of(content, 100, "glass reagent bottle 250 mL", "loose cap", 22);
        Assert.InRange((double)Follow(situation, 0.1).Expected.Times.Count() / Follow(situation).Expected.Times.Count(), 6, 14);
    }

    // A gas that leaks past a septum at low pressure goes in proportion to what is left: the first tenth after ln(10/9) of the time in which the first
    // rate would take all, nine tenths after ln 10 of it.
    [Theory]
    [InlineData("argon")]
    [InlineData("hydrogen")]
    [InlineData("chlorine")]
    public void GasThroughASeptum_FadesExponentially(string gas)
    {
        var bottle = Bench.Of(gas, gas == "hydrogen" ? 5e-4 : 0.01, "glass vial 20 mL", "crimp cap, butyl rubber", 20);
        var (loss, course) = (Course(bottle), Follow(bottle).Expected);
        loss.Evaluate([bottle.Amount.Kilograms]);
        var tau = bottle.Amount.Kilograms / loss.Rate(0, BandEnd.Expected, 1);
        foreach (var left in (double[])[0.9, 0.5, 0.2, 0.1])
            Assert.Equal(-Math.Log(left), course.Reaches(new(left))!.Value.Seconds / tau, 0.01 * -Math.Log(left));
    }

    // Stefan's tube: what evaporates through still gas above a falling level takes (x1^2 - x0^2)/2 times what one length of it takes (Bird, Stewart, Lightfoot,
    // Transport Phenomena, section 18.2); the neck above stays as long as it is.
    [Fact]
    public void OpenTube_EmptiesByStefansLaw()
    {
        var tube = Bench.Of("water", 40, "glass reagent bottle 100 mL", "none", 20) with { Humidity = new Fraction(0) };
        var (loss, course) = (Course(tube), Follow(tube).Expected);
        double Slowness(double left)
        {
            loss.Evaluate([left * tube.Amount.Kilograms]);
            return tube.Amount.Kilograms / loss.Rate(0, BandEnd.Expected, 1);
        }

        // Slowness is a straight line in the amount gone, neck and all; so is its integral a parabola.
        var (full, half) = (Slowness(1), Slowness(0.5));
        Assert.Equal(half - full, Slowness(0.1) - full - (0.8 * (half - full)), 0.005 * half);
        foreach (var left in (double[])[0.9, 0.5, 0.2, 0.1])
        {
            var gone = 1 - left;
            var time = (full * gone) + ((half - full) * gone * gone);
            Assert.Equal(time, course.Reaches(new(left))!.Value.Seconds, 0.005 * time);
        }
    }

    // In balance with the room nothing moves: the mass of the end stays, a hundred years on and four hundred; the acid itself was there all along.
    [Theory]
    [InlineData("sulfuric acid 98%", 5, 0.3)]
    [InlineData("sulfuric acid 98%", 5, 0.5)]
    [InlineData("sulfuric acid 98%", 200, 0.5)]
    [InlineData("sulfuric acid 60%", 5, 0.3)]
    [InlineData("sulfuric acid 60%", 200, 0.5)]
    [InlineData("calcium chloride 40%", 50, 0.5)]
    public void SolutionInBalanceWithTheRoom_Stays(string content, double grams, double humidity)
    {
        foreach (var closure in (string[])["none", "loose cap"])
        {
            var course = Follow(Bench.Of(content, grams, "glass reagent bottle 250 mL", closure, 25) with { Humidity = new Fraction(humidity) }).Expected;
            var (century, later) = (Left(course, Span.FromYears(150)), Left(course, Span.FromYears(450)));
            Assert.Equal(century, later, 0.002 * century);
            foreach (var years in (double[])[0.1, 1, 5, 20, 150, 450])
                Assert.Equal(1, Left(course, Span.FromYears(years)) * course.Strength(Span.FromYears(years)).Value, 0.004);
        }
    }

    // A solution of a gas loses its gas whatever the warmth: as it grows weaker the water presses more, yet below its boiling point it goes on to fade
    // (common practice: ammonia water left warm is soon plain water).
    [Theory]
    [InlineData(20)]
    [InlineData(50)]
    [InlineData(52)]
    [InlineData(60)]
    public void AmmoniaWater_LeftWarm_GoesFlat(double celsius)
    {
        var course = Follow(Bench.Of("ammonia solution 25%", 150, "glass reagent bottle 250 mL", "loose cap", celsius)).Expected;
        var days = (double[])[1, 10, 100];
        Assert.True(days.Select(d => course.Strength(Span.FromDays(d)).Value).Zip((double[])[0.95, 0.5, 0.1]).All(p => p.First < p.Second || celsius < 50), "it stays strong");
        Assert.True(course.Strength(Span.FromYears(10)).Value < 0.01 && course.Last.Rate > 0);
    }

    // A leak that a balance shows to be three times as fast empties the bottle in a third of the time; what only changes into another element keeps its pace.
    [Fact]
    public void Pace_HastensWhatABalanceShows()
    {
        var course = Course(Bench.Of("acetone", 100, "glass reagent bottle 250 mL", "loose cap", 20));
        var paced = Trajectory.Follow(course, new Band<double>(1, 2, 3));
        var years = Ends(paced).Select(t => t.Reaches(new(0.5))!.Value.Years).ToArray();
        Assert.Equal(2, years[0] / years[1], 0.001);
        Assert.Equal(3, years[0] / years[2], 0.001);
    }
}
