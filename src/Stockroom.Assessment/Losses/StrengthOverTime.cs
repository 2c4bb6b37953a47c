using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// The strength of the deciding part over time at one end of the band, as a share of that at the start: what leaves and comes in changes its
/// share of the whole, and what decomposes goes beside. Where both act, a strength that rises as the solvent leaves is not set against what
/// decomposes, to err to the early side.
/// </summary>
internal sealed class StrengthOverTime
{
    private readonly Trajectory? _whole;
    private readonly Season _season;
    private readonly DecompositionLaw? _law;
    private readonly RateConstant _rate;

    /// <summary>From what goes and comes, from what decomposes, or from both.</summary>
    /// <param name="whole">With its deciding part; null where the composition stays.</param>
    /// <param name="season">From the first day on.</param>
    /// <param name="law">Null where nothing decomposes.</param>
    /// <param name="rate">Share that decomposes a second at the start.</param>
    public StrengthOverTime(Trajectory? whole, Season season, DecompositionLaw? law, RateConstant rate) =>
        (_whole, _season, _law, _rate) = (whole?.Deciding is null ? null : whole, season, law, rate);

    /// <summary>How long after the first day the course begins: at the last weighing, where weighings are followed; until then the strength goes evenly.</summary>
    public Span Before { get; init; }

    /// <summary>Share of the deciding part at which it begins.</summary>
    public Fraction Begins { get; init; } = new(1);

    /// <summary>Left after so much time on the calendar; above 1 where it has risen.</summary>
    public Fraction Left(Span elapsed) => Left(elapsed, elapsed < Before ? new(1 + ((Begins.Value - 1) * Math.Max(0, elapsed / Before))) : Composition(_season.Effective(elapsed - Before)));

    /// <summary>Time on the calendar until a share is left for the first time; null for never.</summary>
    public Span? TimeTo(Fraction left)
    {
        if (left.Value >= 1)
            return new Span(0);
        if (Before.Seconds > 0 && Left(Before) <= left)
            return Between(new Span(0), Before, left, Left);
        var from = new Span(0);
        foreach (var to in _whole?.Times.Skip(1) ?? [])
        {
            if (After(to) <= left)
                return to.Seconds > 4 * Trajectory.Horizon ? null : Before + _season.Calendar(Between(from, to, left, After));
            from = to;
        }

        // From the last point on the composition stays.
        return _law is { } law ? new Span(Math.Max((Before + _season.Calendar(from)).Seconds, StrengthLaw.TimeTo(law, _rate, left / Composition(from).Value).Seconds)) : null;
    }

    private static Span Between(Span before, Span after, Fraction left, Func<Span, Fraction> at)
    {
        for (var i = 0; i < 50 && after.Seconds - before.Seconds > 60; i++)
        {
            var middle = (before + after) / 2;
            if (at(middle) > left)
                before = middle;
            else
                after = middle;
        }

        return (before + after) / 2;
    }

    private Fraction After(Span effective) => Left(Before + (_law is null ? effective : _season.Calendar(effective)), Composition(effective));

    private Fraction Left(Span elapsed, Fraction share) => elapsed.Seconds <= 0 ? new Fraction(1)
        : _law is { } law ? new Fraction(Math.Min(1, share.Value) * StrengthLaw.Left(law, _rate, elapsed).Value)
        : share;

    private Fraction Composition(Span effective)
    {
        var share = Begins * (_whole?.Strength(effective).Value ?? 1);
        return _law is null || share.Value < 1 ? share : new Fraction(1);
    }
}
