using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>A course between its points, against courses worked out by hand.</summary>
public sealed class TrajectoryTests
{
    private const double Minute = 60;
    private const double Year = Span.SecondsPerYear;

    // 1 kg that loses 0.1 kg a year, known at the start, after two years and after five; and goes on so.
    private static Trajectory Even => new([new(0, 1, 0.1 / Year), new(2 * Year, 0.8, 0.1 / Year), new(5 * Year, 0.5, 0.1 / Year)]);

    // A drop whose mass falls as the cube (1 - t/10 a)^3, which a cubic follows exactly.
    private static Trajectory Cube => new([.. new[] { 0.0, 3, 4, 8 }.Select(t => new Trajectory.Point(t * Year, Math.Pow(1 - (t / 10), 3), 0.3 * Math.Pow(1 - (t / 10), 2) / Year))]);

    [Theory]
    [InlineData(-1, 1)]
    [InlineData(0, 1)]
    [InlineData(1, 0.9)]
    [InlineData(2, 0.8)]
    [InlineData(3.5, 0.65)]
    [InlineData(5, 0.5)]
    [InlineData(7, 0.3)]
    [InlineData(10, 0)]
    [InlineData(20, 0)]
    public void EvenLoss_IsAStraightLine_DownToNothing(double years, double left) => Assert.Equal(left, Even.After(Span.FromYears(years)).Kilograms, 1e-9);

    [Theory]
    [InlineData(1)]
    [InlineData(3.3)]
    [InlineData(4)]
    [InlineData(6.5)]
    [InlineData(8)]
    public void CubicLoss_IsItsCube(double years)
    {
        var left = Math.Pow(1 - (years / 10), 3);
        Assert.Equal(left, Cube.After(Span.FromYears(years)).Kilograms, 1e-9);
        Assert.Equal(years * Year, Cube.Reaches(new(left))!.Value.Seconds, 2 * Minute);
    }

    [Theory]
    [InlineData(0.95, 0.5)]
    [InlineData(0.8, 2)]
    [InlineData(0.65, 3.5)]
    [InlineData(0.5, 5)]
    public void EvenLoss_ReachesAShare_InProportion(double left, double years) => Assert.Equal(years * Year, Even.Reaches(new(left))!.Value.Seconds, Minute);

    // What the course does not come to has no date; nor has what it starts with.
    [Theory]
    [InlineData(0.49)]
    [InlineData(1.0)]
    public void ShareOutsideTheCourse_HasNoDate(double left) => Assert.Null(Even.Reaches(new(left)));

    // Some five hundred years are followed; four times that is beyond all reason.
    [Theory]
    [InlineData(1900, true)]
    [InlineData(2100, false)]
    public void DateBeyondAllReason_IsNone(double years, bool dated)
    {
        var slow = new Trajectory([new(0, 1, 0.5 / years / Year), new(years * Year, 0.5, 0.5 / years / Year)]);
        Assert.Equal(dated, slow.Reaches(new(0.6)) is not null);
    }

    // A rate that jumps between two points bends the cubic over; the mass stays between what is known at both.
    [Fact]
    public void RateThatJumps_MakesNoMassOfItsOwn()
    {
        var jumps = new Trajectory([new(0, 1, 0), new(Year, 0.99, 5 / Year)]);
        for (var x = 0.0; x <= 1; x += 0.05)
            Assert.InRange(jumps.After(Span.FromYears(x)).Kilograms, 0.99, 1);
    }

    // One that stands still stays as it is.
    [Fact]
    public void OnePoint_Stays()
    {
        var still = new Trajectory([new(0, 0.3, 0)]) { Deciding = new Trajectory([new(0, 0.1, 0)]) };
        Assert.Equal(0.3, still.After(Span.FromYears(50)).Kilograms);
        Assert.Equal(1, still.Strength(Span.FromYears(50)).Value);
        Assert.Null(still.Reaches(new(0.9)));
    }

    // So little that no course is followed: it goes on at the pace of the start, and a leak a thousand times as wide empties it.
    [Fact]
    public void OnePoint_ThatLosesALittle_GoesOnSo()
    {
        var slow = new Trajectory([new(0, 0.1, 2e-6 / Year)]);
        Assert.Equal(0.1 - 2e-5, slow.After(Span.FromYears(10)).Kilograms, 1e-12);
        Assert.Equal(0.1 - 0.02, slow.After(Span.FromYears(10 * 1000)).Kilograms, 1e-12);
        Assert.Equal(0, slow.After(Span.FromYears(1e6)).Kilograms);
    }

    // Nothing to lose, or no way to lose it by: no course is followed.
    [Theory]
    [InlineData("glass ampoule 10 mL", "flame seal", 5)]
    [InlineData("glass reagent bottle 100 mL", "none", 0)]
    public void WhereNothingGoes_TheCourseIsOnePoint(string vessel, string closure, double grams)
    {
        var situation = Bench.Of("acetone", grams, vessel, closure, 20);
        var course = Trajectory.Follow(new LossCourse(situation, Bench.Facts, YearNetwork.Of(situation, Bench.Facts)));
        foreach (var end in (Trajectory[])[course.Low, course.Expected, course.High])
        {
            Assert.Equal(new Span(0), Assert.Single(end.Times));
            Assert.Equal(grams / 1000, end.After(Span.FromYears(100)).Kilograms, 1e-12);
        }
    }

    // A solution of one in ten whose solute fades e-fold in a year while the water falls evenly: strength is the quotient of both, each against its start.
    private static Trajectory Solution(double lastSolute = double.NaN)
    {
        var years = new[] { 0.0, 1, 2 };
        double Solute(double t) => t == 2 && !double.IsNaN(lastSolute) ? lastSolute : 0.1 * Math.Exp(-t);
        return new([.. years.Select(t => new Trajectory.Point(t * Year, 1 - (0.2 * t), 0.2 / Year))])
        {
            Deciding = new([.. years.Select(t => new Trajectory.Point(t * Year, Solute(t), Solute(t) / Year))]),
        };
    }

    [Theory]
    [InlineData(-1, 1)]
    [InlineData(0, 1)]
    [InlineData(0.5, 0.673923)]
    [InlineData(1, 0.459849)]
    [InlineData(1.25, 0.382007)]
    [InlineData(2, 0.225559)]
    [InlineData(9, 0.225559)]
    public void Strength_IsTheShareOfWhatIsLeft(double years, double strength) => Assert.Equal(strength, Solution().Strength(Span.FromYears(years)).Value, 1e-6);

    // A part that is gone at the end has no logarithm there; between it is followed as it is. Cubic from exp(-1)/10 with its slope to none: by hand at
    // the middle half the start, less an eighth of the year's slope.
    [Fact]
    public void Strength_OfAPartThatIsGone_EndsAtNone()
    {
        Assert.Equal(0, Solution(0).Strength(Span.FromYears(2)).Value);
        Assert.Equal((0.5 - 0.125) * Math.Exp(-1) / 0.7, Solution(0).Strength(Span.FromYears(1.5)).Value, 1e-9);
    }
}
