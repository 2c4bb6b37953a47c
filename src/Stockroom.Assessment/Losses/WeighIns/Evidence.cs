using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses.WeighIns;

/// <summary>What the weighings make of the forecast: the physics is the prior, the weighings the likelihood.</summary>
internal sealed class Evidence
{
    // More would change nothing but the time it takes.
    private const int MostWeighings = 30;

    // Where nothing should leave, a failing seal may lose anything from what a balance can just show to all of it within a month.
    private static readonly Span Month = Span.FromDays(30);

    private Evidence(WeighingSeries series, MeasuredLoss measured, Band<MassRate> prior, bool complete)
    {
        Series = series;
        Measured = measured;
        Prior = prior;
        IsComplete = complete;
    }

    public WeighingSeries Series { get; }

    public MeasuredLoss Measured { get; }

    /// <summary>Loss of the gross mass over the weighings by the physics alone; no rate where that could not be computed.</summary>
    public Band<MassRate> Prior { get; }

    /// <summary>False where some way out could not be computed.</summary>
    public bool IsComplete { get; }

    public required LeakPosterior Posterior { get; init; }

    /// <summary>The rate which the posterior's factor multiplies.</summary>
    public required MassRate Unit { get; init; }

    /// <summary>True where the factor scales the physics; else the rate is a plain one in time.</summary>
    public required bool Scales { get; init; }

    public required bool TakesUp { get; init; }

    /// <summary>How far intervals stray from the course.</summary>
    public required SeasonStray Stray { get; init; }

    /// <summary>Loss rate of the gross mass today, by physics and weighings together.</summary>
    public Band<MassRate> Rate => Posterior.Factor.Select(f => Unit * f);

    /// <summary>What the content itself had lost a time after the first weighing, its cover left out, by physics and weighings; as a function of the factor.</summary>
    public required Func<Span, double, Mass> Lost { get; init; }

    /// <summary>What the content of the first weighing had become a time after; as a function of the factor, and of the most that was seen to go.</summary>
    public required Func<Span, double, Mass, Content> ContentAfter { get; init; }

    /// <summary>Null where no two weighings compare.</summary>
    public static Evidence? Of(Situation situation, PropertyFacts facts, YearNetwork network)
    {
        var year = network.Year;
        if (situation.Weighings.Count < 2)
            return null;
        var breathes = situation.Closure.Mechanism is ClosureMechanism.Gap or ClosureMechanism.Open;
        var room = breathes ? new LossState(situation, facts).Headspace : default;
        var series = WeighingSeries.Of(situation.Weighings, situation.Draws, situation.Vessel.OutsideVolume, room).Latest(MostWeighings);
        if (MeasuredLoss.Of(series) is not { } measured)
            return null;
        var first = series.Points[0];
        var amount = new Mass(situation.Amount.Kilograms + situation.Draws.Where(d => d.On > first.On).Sum(d => d.Amount?.Kilograms ?? 0));
        var atFirst = situation with { Amount = amount.Kilograms > 0 ? amount : situation.Amount, AmountOn = first.On };
        var course = GrossCourse.Of(atFirst, facts, network);
        var stepRange = Math.Max(0.5 * amount.Kilograms, 1e-3);
        var stray = SeasonStray.Of(atFirst, facts);
        return year.IsKnown && course.Rate.Expected.KilogramsPerSecond > 0
            ? Scaled(series, measured, course, year.IsComplete, stepRange, stray)
            : Plain(series, measured, year, atFirst, stepRange, stray);
    }

    private static Evidence Scaled(WeighingSeries series, MeasuredLoss measured, GrossCourse course, bool complete, double stepRange, SeasonStray stray)
    {
        var first = series.Points[0].Seconds;
        var prior = LeakPrior.About(course.Rate, complete);
        EvenTimes[] Even(BandEnd lag) => [.. series.Points.Select(p => course.Even(new Span(p.Seconds - first), lag))];
        var (quick, usual, slow) = (Even(BandEnd.Low), Even(BandEnd.Expected), Even(BandEnd.High));
        void At(double before, int changesAt, double factor, Unweighed unweighed, Span<double> lost)
        {
            var even = unweighed.Lag switch { BandEnd.Low => quick, BandEnd.High => slow, _ => usual };
            for (var i = 0; i < lost.Length; i++)
                lost[i] = course.Lost(even[i].Paced(before, even[changesAt], factor), unweighed.Uptake);
        }

        return new Evidence(series, measured, course.Felt(new Span(series.Points[^1].Seconds - first)), complete)
        {
            Posterior = LeakPosterior.Of(series, prior, At, stepRange, stray, course.Unweighed),
            Unit = course.Rate.Expected,
            Scales = true,
            TakesUp = course.TakesUp,
            Stray = stray,
            Lost = course.ContentLost,
            ContentAfter = course.ContentAfter,
        };
    }

    private static Evidence Plain(WeighingSeries series, MeasuredLoss measured, LossNetwork year, Situation atFirst, double stepRange, SeasonStray stray)
    {
        var first = series.Points[0].Seconds;
        var whole = Math.Max(series.Points[^1].Seconds - first, 86400);
        var least = Math.Log(0.1 * Math.Sqrt(series.Points.Min(p => p.Variance)) / whole);
        var most = Math.Max(Math.Log(Math.Max(atFirst.Amount.Kilograms, 1e-6) / Month.Seconds), least + 5);
        var prior = year.IsKnown && year.IsComplete ? LeakPrior.Tight(least, most) : LeakPrior.Open(least, most);
        void At(double before, int changesAt, double factor, Unweighed unweighed, Span<double> lost)
        {
            for (var i = 0; i < lost.Length; i++)
                lost[i] = factor * (series.Points[i].Seconds - first);
        }

        return new Evidence(series, measured, year.Weighable, year.IsKnown && year.IsComplete)
        {
            Posterior = LeakPosterior.Of(series, prior, At, stepRange, stray, [Unweighed.Expected]),
            Unit = new MassRate(1),
            Scales = false,
            TakesUp = false,
            Stray = stray,
            Lost = (since, factor) => new Mass(factor * since.Seconds),
            ContentAfter = (_, _, _) => atFirst.Content,
        };
    }
}
