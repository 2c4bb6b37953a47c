using Stockroom.Assessment.Losses.WeighIns;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>What weighings make of a forecast.</summary>
public sealed class WeighedForecast
{
    private WeighedForecast(Situation start, Evidence evidence, SealVerdict verdict, bool follows, Band<MassRate> prior, Band<MassRate> rate)
    {
        (Start, Evidence, Verdict, Follows, PriorRate, Rate) = (start, evidence, verdict, follows, prior, rate);
    }

    /// <summary>What they say of the seal.</summary>
    public SealVerdict Verdict { get; }

    /// <summary>Loss rate by the physics alone.</summary>
    public Band<MassRate> PriorRate { get; }

    /// <summary>Loss rate by physics and weighings together.</summary>
    public Band<MassRate> Rate { get; }

    /// <summary>True where the forecast follows the weighings; false where nothing should leave and nothing was seen to.</summary>
    public bool Follows { get; }

    /// <summary>What the forecast makes of the weighings, in words.</summary>
    public string Because => Follows
        ? $"the forecast follows {Verdict.Measured!.Weighings} weighings from {Verdict.Measured.From:yyyy-MM-dd} to {Verdict.Measured.To:yyyy-MM-dd}: {Words(Rate)} g a year; the physics alone {(PriorRate.High.KilogramsPerSecond > 0 ? $"gives {Words(PriorRate)}" : "gives nothing")}"
        : $"{Verdict.Measured!.Weighings} weighings show no loss, as expected";

    internal Evidence Evidence { get; }

    /// <summary>The situation on the day of the last weighing, with what was left then.</summary>
    public Situation Start { get; }

    internal static WeighedForecast? Of(Situation situation, Evidence? evidence, LossNetwork year)
    {
        if (evidence is null)
            return null;
        var verdict = SealVerdict.Of(situation, evidence);
        var transmuted = BandMath.Linear(year.Paths.Where(p => p.Finding.Role == PathRole.Transmuted).Select(p => p.Rate));
        var weighable = evidence.Scales
            ? evidence.Posterior.Factor.Select(f => year.Weighable.Expected * f)
            : evidence.Rate;
        return new WeighedForecast(
            Anchored(situation, evidence), evidence, verdict, evidence.Scales || !evidence.IsComplete || verdict.IsAlarm, year.Total, BandMath.Sum([weighable, transmuted]));
    }

    // From the amount known on its day to the last weighing: by the readings where they compare, by the course where they do not.
    private static Situation Anchored(Situation situation, Evidence evidence)
    {
        var points = evidence.Series.Points;
        var last = points[^1];
        if (situation.AmountOn >= last.On)
            return situation;
        var factor = evidence.Posterior.Factor.Expected;
        var first = points[0].Seconds;
        Mass Course(double from, double to) => evidence.Lost(new Span(to - first), factor) - evidence.Lost(new Span(from - first), factor);
        var readings = situation.HasLiquidCover || evidence.TakesUp;
        var (since, lost) = (situation.AmountOn.DayNumber * 86400.0, 0.0);
        for (var i = 0; i < points.Count; i++)
        {
            if (points[i].Seconds <= since)
                continue;
            var compares = i > 0 && !points[i].Begins && !readings && points[i - 1].Seconds >= since;
            lost += compares ? points[i - 1].Kilograms - points[i].Kilograms : Math.Max(0, Course(Math.Max(since, i > 0 ? points[i - 1].Seconds : since), points[i].Seconds).Kilograms);
        }

        return situation with { Amount = new Mass(Math.Max(0, situation.Amount.Kilograms - Math.Max(0, lost))), AmountOn = last.On };
    }

    private static string Words(Band<MassRate> rate) => $"{SealVerdict.Grams(rate.Expected)} ({SealVerdict.Grams(rate.Low)} to {SealVerdict.Grams(rate.High)})";
}
