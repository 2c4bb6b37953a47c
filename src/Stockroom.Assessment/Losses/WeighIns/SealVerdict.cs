using System.Globalization;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses.WeighIns;

/// <summary>What the weighings say of the seal.</summary>
public enum SealState
{
    /// <summary>Too few weighings without a draw between them.</summary>
    NotEnough = 0,

    /// <summary>No change that the balance could show.</summary>
    NoChange,

    /// <summary>A loss within what the closure explains.</summary>
    Within,

    /// <summary>Less than the closure would let go; it is tighter than most, or something is taken up.</summary>
    Below,

    /// <summary>More than nineteen in twenty such closures let go, and not yet so much that it must be failing.</summary>
    Above,

    /// <summary>More than the closure could explain, or much more than before: the seal fails, or something was taken out unbooked.</summary>
    Failing,

    /// <summary>The mass rises: moisture or air goes in.</summary>
    Rising,
}

/// <summary>The measured loss against the forecast, with the reason in figures.</summary>
public sealed record SealVerdict(SealState State, MeasuredLoss? Measured, Band<MassRate>? Forecast, string Because)
{
    // Said when a failing seal, or something taken out unbooked, is the likelier story.
    private const double Likelier = 0.5;

    // A rise, or a loss above the band, must stand out by four standard errors.
    private const double TimesTheReach = 2;

    /// <summary>True where the keeper should act.</summary>
    public bool IsAlarm => State is SealState.Failing or SealState.Rising;

    public static SealVerdict Of(Situation situation, PropertyFacts facts)
    {
        if (situation.Weighings.Count < 2)
            return new SealVerdict(SealState.NotEnough, null, null, "two weighings are needed");
        return Of(situation, Evidence.Of(situation, facts, YearNetwork.Of(situation, facts)));
    }

    internal static SealVerdict Of(Situation situation, Evidence? evidence) => evidence is null
        ? new SealVerdict(SealState.NotEnough, null, null, situation.Weighings.Count < 2 ? "two weighings are needed" : "something was drawn between all weighings; weigh once more")
        : Judge(evidence, situation);

    private static SealVerdict Judge(Evidence e, Situation situation)
    {
        var (m, f, posterior) = (e.Measured, e.Prior, e.Posterior);
        var recent = m.Last ?? m;
        var words = $"{Change(m)} from {m.Weighings} weighings {m.From:yyyy-MM-dd} to {m.To:yyyy-MM-dd}";
        var explained = e.IsComplete ? $"{situation.Closure.Name} explains {Grams(f.Low)} to {Grams(f.High)}" : "what the closure lets go could not be computed in full";
        if (Rises(m) || Rises(recent))
            return new SealVerdict(SealState.Rising, m, f, $"the mass rises: {words}; moisture or air goes in");
        var dropped = recent.Rate.KilogramsPerSecond > 0 ? posterior.LastStep : 0;
        if (e.IsComplete && posterior.Failing + dropped > Likelier && recent.Low.KilogramsPerSecond > 0)
            return new SealVerdict(SealState.Failing, m, f, Failing(e, words, explained, recent, dropped));
        if (e.IsComplete && e.Rate.Expected > f.High && m.Rate - (m.Reach * TimesTheReach) > f.High)
            return new SealVerdict(SealState.Above, m, f, $"{words}; {explained}, in nineteen cases of twenty: weigh again soon");
        if (m.Low.KilogramsPerSecond <= 0 || (e.IsComplete && !e.Scales))
            return new SealVerdict(SealState.NoChange, m, f, $"no change that the balance could show: {words}");
        return m.High < f.Low
            ? new SealVerdict(SealState.Below, m, f, $"{words}; {explained}: tighter than most, or something is taken up")
            : new SealVerdict(SealState.Within, m, f, $"{words}; {explained}");
    }

    private static string Failing(Evidence e, string words, string explained, MeasuredLoss recent, double dropped)
    {
        var m = e.Measured;
        var lately = m.Last is null ? "" : $", lately {Grams(recent.Rate)}";
        if (dropped > e.Posterior.Failing)
            return $"{words}{lately}; {explained}: the seal fails, or something was taken out and not booked; weigh once more to tell";
        return e.Posterior.Begun > 0.5 * e.Posterior.Failing && m.Before is { } before && recent.Rate > before.Rate
            ? $"it lost {Grams(before.Rate)} g a year until {before.To:yyyy-MM-dd} and {Grams(recent.Rate)} since: the seal has begun to leak"
            : $"{words}{lately}; {explained}: the seal fails";
    }

    private static bool Rises(MeasuredLoss loss) => (loss.Rate + (loss.Reach * TimesTheReach)).KilogramsPerSecond < 0;

    private static string Change(MeasuredLoss m) => m.High.KilogramsPerSecond < 0
        ? $"{Grams(Gain(m.Rate))} g a year gained ({Grams(Gain(m.High))} to {Grams(Gain(m.Low))})"
        : $"{Grams(m.Rate)} g a year lost ({Grams(m.Low)} to {Grams(m.High)})";

    private static MassRate Gain(MassRate loss) => loss * -1;

    // Adding nothing makes a plain 0 of a loss that rounds to -0.
    internal static string Grams(MassRate rate) => (Math.Round(rate.GramsPerYear, 3) + 0.0).ToString(Math.Abs(rate.GramsPerYear) >= 10 ? "0" : "0.###", CultureInfo.InvariantCulture);
}
