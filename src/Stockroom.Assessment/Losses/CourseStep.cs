namespace Stockroom.Assessment.Losses;

/// <summary>
/// One accepted step of a content of several parts, readable in between: of each part a cubic through the logarithms of its mass at both
/// ends and their slopes. A step may be long to a part that fades straight in its logarithm; the whole mass is then far from any cubic.
/// </summary>
internal readonly ref struct CourseStep(double start, double length, int? deciding)
{
    // No part that moves less than this, as a logarithm, bends the whole mass by more than two ten-thousandths of itself.
    private const double Straight = 0.5;
    private const int MostHalvings = 8;
    private const int MostBisections = 40;

    public required ReadOnlySpan<double> From { get; init; }

    public required ReadOnlySpan<double> FromSlope { get; init; }

    public required ReadOnlySpan<double> To { get; init; }

    public required ReadOnlySpan<double> ToSlope { get; init; }

    /// <summary>
    /// Adds points within the step, so close that a cubic through whole masses holds to a share of the mass; none where its ends do.
    /// </summary>
    /// <param name="tolerance">Share of the mass by which the cubic may be off.</param>
    /// <param name="whole">The course so far; its last point is the start of the step.</param>
    /// <param name="end">The end of the step, or of the course within it; not yet in the course.</param>
    /// <param name="part">The course of the deciding part, point for point; null without one.</param>
    public void Fill(double tolerance, List<Trajectory.Point> whole, Trajectory.Point end, List<Trajectory.Point>? part)
    {
        for (var i = 0; i < From.Length; i++)
        {
            if (Math.Abs(To[i] - From[i]) > Straight)
            {
                Halve(0, (end.Seconds - start) / length, MostHalvings, tolerance, whole, end, part);
                return;
            }
        }
    }

    /// <summary>The point within the step at which so much is left, where it ends with less; and the deciding part there.</summary>
    public (Trajectory.Point Whole, Trajectory.Point Deciding) Reaches(double kilograms)
    {
        var (low, high) = (0.0, 1.0);
        for (var i = 0; i < MostBisections; i++)
        {
            var middle = (low + high) / 2;
            if (At(middle).Whole.Kilograms > kilograms)
                low = middle;
            else
                high = middle;
        }

        return At(high);
    }

    private void Halve(double low, double high, int halvings, double tolerance, List<Trajectory.Point> whole, Trajectory.Point end, List<Trajectory.Point>? part)
    {
        var x = (low + high) / 2;
        var (middle, deciding) = At(x);
        if (halvings == 0 || Math.Abs(Trajectory.Between(whole[^1], end, middle.Seconds) - middle.Kilograms) <= tolerance * middle.Kilograms)
            return;
        Halve(low, x, halvings - 1, tolerance, whole, middle, part);
        whole.Add(middle);
        part?.Add(deciding);
        Halve(x, high, halvings - 1, tolerance, whole, end, part);
    }

    // The whole and the deciding part so far into the step.
    private (Trajectory.Point Whole, Trajectory.Point Deciding) At(double x)
    {
        var (x2, x3) = (x * x, x * x * x);
        var seconds = start + (x * length);
        var (mass, rate) = (0.0, 0.0);
        Trajectory.Point own = default;
        for (var i = 0; i < From.Length; i++)
        {
            var y = (((2 * x3) - (3 * x2) + 1) * From[i]) + (((3 * x2) - (2 * x3)) * To[i]) + (length * (((x3 - (2 * x2) + x) * FromSlope[i]) + ((x3 - x2) * ToSlope[i])));
            var slope = (6 * (x - x2) * (To[i] - From[i]) / length) + (((3 * x2) - (4 * x) + 1) * FromSlope[i]) + (((3 * x2) - (2 * x)) * ToSlope[i]);
            var held = Math.Clamp(y, Math.Min(From[i], To[i]), Math.Max(From[i], To[i]));
            var kilograms = Math.Exp(held);
            var leaves = held == y ? -slope * kilograms : 0;
            (mass, rate) = (mass + kilograms, rate + leaves);
            if (i == deciding)
                own = new Trajectory.Point(seconds, kilograms, leaves);
        }

        return (new Trajectory.Point(seconds, mass, rate), own);
    }
}
