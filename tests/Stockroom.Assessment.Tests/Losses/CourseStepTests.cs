using Stockroom.Assessment.Losses;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>A step read in between, against parts that fade by the exponential law, which a straight line through logarithms follows exactly.</summary>
public sealed class CourseStepTests
{
    private const double Start = 1000;
    private const double Length = 200;

    // Logarithms fall by so much over the step, evenly.
    private static double[] Even(params double[] falls) => [.. falls.Select(f => -f / Length)];

    private static double Mass(double[] falls, double x) => falls.Sum(f => Math.Exp(-f * x));

    private static Trajectory.Point Point(double[] falls, double x) =>
        new(Start + (x * Length), Mass(falls, x), falls.Sum(f => f / Length * Math.Exp(-f * x)));

    private static CourseStep Step(double[] falls, int? deciding = null) =>
        new(Start, Length, deciding) { From = new double[falls.Length], FromSlope = Even(falls), To = falls.Select(f => -f).ToArray(), ToSlope = Even(falls) };

    private static List<Trajectory.Point> Filled(double[] falls, double tolerance, double end = 1, int? deciding = null, List<Trajectory.Point>? part = null)
    {
        var whole = new List<Trajectory.Point> { Point(falls, 0) };
        Step(falls, deciding).Fill(tolerance, whole, Point(falls, end), part);
        return [.. whole, Point(falls, end)];
    }

    private static double WorstOf(List<Trajectory.Point> points, double[] falls)
    {
        var worst = 0.0;
        for (var i = 1; i < points.Count; i++)
        {
            for (var share = 0.05; share < 1; share += 0.05)
            {
                var s = points[i - 1].Seconds + (share * (points[i].Seconds - points[i - 1].Seconds));
                var mass = Mass(falls, (s - Start) / Length);
                worst = Math.Max(worst, Math.Abs(Trajectory.Between(points[i - 1], points[i], s) - mass) / mass);
            }
        }

        return worst;
    }

    // A mass that falls to a tenth is no cubic, nor is one of which one part goes at once and the other stays.
    [Theory]
    [InlineData(2.3, 2.3)]
    [InlineData(8.0, 0.1)]
    [InlineData(0.3, 30.0)]
    [InlineData(60.0, 60.0)]
    public void LongStep_IsFilled_UntilACubicHolds(double first, double second)
    {
        double[] falls = [first, second];
        Assert.True(WorstOf([Point(falls, 0), Point(falls, 1)], falls) > 0.01);
        Assert.True(WorstOf(Filled(falls, 1e-4), falls) < 5e-4);
    }

    // Less than half an e-fold bends no mass: the cubic's error is (0.5/4)^4/24 of it, one in a hundred thousand (Hermite interpolation).
    [Fact]
    public void ShortStep_NeedsNoPoints()
    {
        Assert.Equal(2, Filled([0.49, 0.2], 1e-12).Count);
        Assert.True(WorstOf(Filled([0.49, 0.2], 1e-12), [0.49, 0.2]) < 2e-4);
        Assert.True(Filled([0.2, 0.52], 1e-12).Count > 2);
    }

    // In order of time, on the curve, no more than eight halvings of the step allow, whatever is asked for.
    [Fact]
    public void Points_LieOnTheCurve_AndAreNotWithoutEnd()
    {
        var points = Filled([5, 1], 0);
        Assert.InRange(points.Count, 100, 2 + 255);
        for (var i = 1; i < points.Count; i++)
            Assert.True(points[i].Seconds > points[i - 1].Seconds && points[i].Kilograms < points[i - 1].Kilograms);
        Assert.All(points, p => Assert.Equal(Point([5, 1], (p.Seconds - Start) / Length).Kilograms, p.Kilograms, 1e-12));
        Assert.All(points, p => Assert.Equal(Point([5, 1], (p.Seconds - Start) / Length).Rate, p.Rate, 1e-12));
    }

    // A course that ends within the step gets no point behind its end.
    [Fact]
    public void CourseThatEndsWithin_IsFilledUpToItsEnd()
    {
        var points = Filled([8, 0.5], 1e-4, end: 0.4);
        Assert.True(points.Count > 2);
        Assert.All(points, p => Assert.True(p.Seconds <= Start + (0.4 * Length)));
        Assert.True(WorstOf(points, [8, 0.5]) < 5e-4);
    }

    // The deciding part point for point: the same times, its own mass and rate.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void DecidingPart_IsGivenPointForPoint(int deciding)
    {
        double[] falls = [4, 1];
        var part = new List<Trajectory.Point>();
        var whole = Filled(falls, 1e-5, deciding: deciding, part: part)[1..^1];
        Assert.NotEmpty(part);
        Assert.Equal(whole.Select(p => p.Seconds), part.Select(p => p.Seconds));
        Assert.All(part, p => Assert.Equal(Math.Exp(-falls[deciding] * (p.Seconds - Start) / Length), p.Kilograms, 1e-12));
        Assert.All(part, p => Assert.Equal(falls[deciding] / Length * p.Kilograms, p.Rate, 1e-12));
    }

    // Half of a kilogram that fades e-fold a hundred seconds is left after a hundred times ln 2.
    [Theory]
    [InlineData(0.5)]
    [InlineData(0.9)]
    [InlineData(0.2)]
    public void AmountWithinTheStep_IsReachedAtItsLogarithm(double left)
    {
        var (whole, part) = Step([2], 0).Reaches(left);
        Assert.Equal(Start - (100 * Math.Log(left)), whole.Seconds, 1e-6);
        Assert.Equal(left, whole.Kilograms, 1e-9);
        Assert.Equal(left / 100, whole.Rate, 1e-9);
        Assert.Equal(whole, part);
    }

    // A slope that would carry a part above its start, where the step ends below, holds it there: nothing leaves meanwhile.
    [Fact]
    public void PartThatTheCubicOvershoots_IsHeld()
    {
        var whole = new List<Trajectory.Point> { new(Start, 1, 0) };
        new CourseStep(Start, Length, null) { From = [0.0], FromSlope = [10 / Length], To = [-1.0], ToSlope = [-1 / Length] }.Fill(1e-6, whole, new(Start + Length, Math.Exp(-1), Math.Exp(-1) / Length), null);
        var middle = whole.Single(p => p.Seconds == Start + (Length / 2));
        Assert.Equal((1.0, 0.0), (middle.Kilograms, middle.Rate));
    }
}
