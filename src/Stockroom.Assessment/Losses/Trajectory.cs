using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// The amount over time at one level of the band, stepped by the midpoint rule: no step takes more than a tenth of any part (four
/// tenths where the rate hardly changes with the amount), nor moves the rate by a fifth, so halving the steps moves nothing by half a per cent. A part that has
/// become a trace fades in proportion to what is left of it and holds up no step.
/// </summary>
internal sealed class Trajectory
{
    private const double Horizon = 500 * Span.SecondsPerYear;
    private const double StopAt = 0.09;
    private const double Trace = 0.002;
    private const double MostChange = 0.2;
    private const double Negligible = 0.01;

    private readonly List<(double Seconds, double Kilograms)> _points;

    private Trajectory(List<(double Seconds, double Kilograms)> points) => _points = points;

    public static Trajectory Follow(Situation situation, PropertyFacts facts, Func<Band<MassRate>, MassRate> level, double fineness = 1)
    {
        var points = new List<(double Seconds, double Kilograms)>();
        var parts = situation.Content.Parts;
        var mass = parts.Select(p => situation.Amount.Kilograms * (double)p.Percent / 100).ToArray();
        var start = mass.Sum();
        var t = 0.0;
        var before = double.PositiveInfinity;
        points.Add((t, start));
        var share = (Steady(situation, facts) ? 0.4 : 0.1) * fineness;
        for (var step = 0; step < 2000 && start > 0; step++)
        {
            var total = mass.Sum();
            if (total <= StopAt * start || t >= Horizon)
                break;
            var rates = Rates(situation, facts, parts, mass, level);
            if (rates.Sum() * Horizon < Negligible * start || Step(mass, rates, total, share) is not { } seconds)
                break;
            seconds = Math.Min(Math.Min(seconds, 2.5 * before), Horizon - t);
            var halfway = Advance(mass, mass, rates, seconds / 2);
            var between = Rates(situation, facts, parts, halfway, level);
            for (var halved = 0; halved < 8 && Change(rates, between) > MostChange * fineness; halved++)
            {
                seconds /= 2;
                halfway = Advance(mass, mass, rates, seconds / 2);
                between = Rates(situation, facts, parts, halfway, level);
            }

            mass = Advance(mass, halfway, between, seconds);
            before = seconds;
            t += seconds;
            points.Add((t, mass.Sum()));
        }

        return new Trajectory(points);
    }

    /// <summary>The same course run so many times faster or slower, as another rate of the same band would.</summary>
    public Trajectory Paced(Fraction faster) =>
        new(faster.Value > 0 ? [.. _points.Select(p => (p.Seconds / faster.Value, p.Kilograms))] : [_points[0]]);

    /// <summary>Mass left after a time; before the start the amount of the start.</summary>
    public Mass After(Span elapsed)
    {
        var s = elapsed.Seconds;
        if (s <= 0)
            return new Mass(_points[0].Kilograms);
        for (var i = 1; i < _points.Count; i++)
        {
            var (a, b) = (_points[i - 1], _points[i]);
            if (s <= b.Seconds)
                return new Mass(a.Kilograms + ((s - a.Seconds) / (b.Seconds - a.Seconds) * (b.Kilograms - a.Kilograms)));
        }

        if (_points.Count < 2)
            return new Mass(_points[^1].Kilograms);
        var (c, d) = (_points[^2], _points[^1]);
        return new Mass(Math.Max(0, d.Kilograms + ((s - d.Seconds) / (d.Seconds - c.Seconds) * (d.Kilograms - c.Kilograms))));
    }

    /// <summary>When a share of the start is left; null where that lies beyond some 500 years.</summary>
    public Span? Reaches(Fraction left)
    {
        var target = left.Value * _points[0].Kilograms;
        for (var i = 1; i < _points.Count; i++)
        {
            var (a, b) = (_points[i - 1], _points[i]);
            if (b.Kilograms <= target && b.Seconds <= 4 * Horizon)
                return new Span(a.Seconds + ((a.Kilograms - target) / (a.Kilograms - b.Kilograms) * (b.Seconds - a.Seconds)));
        }

        return null;
    }

    private static bool Steady(Situation situation, PropertyFacts facts) =>
        situation.Content.Pure is { } pure && facts.Nuclides(pure).Count == 0 && facts.StateAt(pure, situation.Temperature) != MatterState.Gas;

    private static double[] Rates(Situation situation, PropertyFacts facts, IReadOnlyList<Part> parts, double[] mass, Func<Band<MassRate>, MassRate> level)
    {
        var total = mass.Sum();
        if (total <= 0)
            return new double[mass.Length];
        var content = parts.Count == 1
            ? situation.Content
            : situation.Content with { Parts = [.. parts.Select((p, i) => p with { Percent = (decimal)(100 * mass[i] / total) })] };
        var byPart = LossNetwork.At(new LossState(situation, facts, content, new Mass(total))).ByPart;
        return [.. parts.Select((p, i) => mass[i] > 0 && byPart.TryGetValue(p.Substance, out var band) ? level(band).KilogramsPerSecond : 0)];
    }

    private static double? Step(double[] mass, double[] rates, double total, double share)
    {
        double? dt = null;
        for (var i = 0; i < mass.Length; i++)
        {
            if (rates[i] <= 0 || mass[i] < Trace * total)
                continue;
            var own = share * mass[i] / rates[i];
            dt = dt is { } d ? Math.Min(d, own) : own;
        }

        return dt;
    }

    // How much the whole rate moves over half a step; strong acids weaken fast and need short steps.
    private static double Change(double[] at, double[] halfway)
    {
        var sum = at.Sum();
        return sum > 0 ? at.Zip(halfway, (a, b) => Math.Abs(a - b)).Sum() / sum : 0;
    }

    private static double[] Advance(double[] mass, double[] from, double[] rates, double seconds)
    {
        var total = from.Sum();
        return [.. mass.Select((m, i) => from[i] < Trace * total
            ? (from[i] > 0 ? m * Math.Exp(-rates[i] / from[i] * seconds) : 0)
            : Math.Max(0, m - (rates[i] * seconds)))];
    }
}
