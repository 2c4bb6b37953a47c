using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// The strength of the deciding part over time at one end of the band, as a share of that at the start: what leaves and comes in changes its
/// share of the whole, and what decomposes goes beside. Where both act, a strength that rises as the solvent leaves is not set against what
/// decomposes, to err to the early side.
/// </summary>
internal sealed class StrengthCourse
{
    private readonly Trajectory? _whole;
    private readonly Season _season;
    private readonly DecompositionLaw? _law;
    private readonly RateConstant _rate;

    /// <summary>A course from what goes and comes, from what decomposes, or from both.</summary>
    /// <param name="whole">With its deciding part; null where the composition stays.</param>
    /// <param name="season">From the first day on.</param>
    /// <param name="law">Null where nothing decomposes.</param>
    /// <param name="rate">Share that decomposes a second at the start.</param>
    public StrengthCourse(Trajectory? whole, Season season, DecompositionLaw? law, RateConstant rate) =>
        (_whole, _season, _law, _rate) = (whole?.Deciding is null ? null : whole, season, law, rate);

    /// <summary>Left after so much time on the calendar; above 1 where it has risen.</summary>
    public Fraction Left(Span elapsed) => Left(elapsed, _season.Effective(elapsed));

    /// <summary>Time on the calendar until a share is left for the first time; null for never.</summary>
    public Span? TimeTo(Fraction left)
    {
        if (left.Value >= 1)
            return new Span(0);
        var from = new Span(0);
        foreach (var to in _whole?.Times.Skip(1) ?? [])
        {
            if (After(to) <= left)
                return to.Seconds > 4 * Trajectory.Horizon ? null : _season.Calendar(Between(from, to, left));
            from = to;
        }

        // From the last point on the composition stays.
        return _law is { } law ? new Span(Math.Max(_season.Calendar(from).Seconds, StrengthLaw.TimeTo(law, _rate, left / Composition(from).Value).Seconds)) : null;
    }

    private Span Between(Span before, Span after, Fraction left)
    {
        for (var i = 0; i < 50 && after.Seconds - before.Seconds > 60; i++)
        {
            var middle = (before + after) / 2;
            if (After(middle) > left)
                before = middle;
            else
                after = middle;
        }

        return (before + after) / 2;
    }

    private Fraction After(Span effective) => Left(_law is null ? effective : _season.Calendar(effective), effective);

    private Fraction Left(Span elapsed, Span effective) => elapsed.Seconds <= 0 ? new Fraction(1)
        : _law is { } law ? Composition(effective) * StrengthLaw.Left(law, _rate, elapsed).Value
        : Composition(effective);

    private Fraction Composition(Span effective)
    {
        var share = _whole?.Strength(effective) ?? new Fraction(1);
        return _law is null || share.Value < 1 ? share : new Fraction(1);
    }
}
