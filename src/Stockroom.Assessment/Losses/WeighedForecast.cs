using Stockroom.Assessment.Losses.WeighIns;
using Stockroom.Chemistry.Properties;
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

    /// <summary>How the amount left at the start was come by.</summary>
    internal Anchor Anchor { get; private init; }

    internal static WeighedForecast? Of(Situation situation, Evidence? evidence, PropertyFacts facts, YearNetwork network)
    {
        if (evidence is null)
            return null;
        var year = network.Year;
        var verdict = SealVerdict.Of(situation, evidence);
        var anchor = Anchor.Of(evidence, situation.AmountOn, onlyContentIsWeighed: !situation.HasLiquidCover && !evidence.TakesUp);
        var start = Anchored(situation, evidence, anchor);
        var transmuted = BandMath.Linear(year.Paths.Where(p => p.Finding.Role == PathRole.Transmuted).Select(p => p.Rate));
        var weighable = evidence.Scales
            ? evidence.Posterior.Factor.Select(f => Weighable(start, facts, network) * f)
            : evidence.Rate;
        return new WeighedForecast(
            start, evidence, verdict, evidence.Scales || !evidence.IsComplete || verdict.IsAlarm, year.Total, BandMath.Sum([weighable, transmuted]))
        {
            Anchor = anchor,
        };
    }

    // The situation of the last weighing: what is left then, and what it is made of.
    private static Situation Anchored(Situation situation, Evidence evidence, Anchor anchor)
    {
        var points = evidence.Series.Points;
        return situation.AmountOn >= points[^1].On ? situation : situation with
        {
            Content = evidence.ContentAfter(new Span(points[^1].Seconds - points[0].Seconds), evidence.Posterior.Factor.Expected, anchor.Lost),
            Amount = new Mass(Math.Max(0, (situation.Amount - anchor.Lost).Kilograms)),
            AmountOn = points[^1].On,
        };
    }

    // As full and as strong as it was at the last weighing.
    private static MassRate Weighable(Situation start, PropertyFacts facts, YearNetwork network)
    {
        var course = new LossCourse(start, facts, network, weighable: true);
        course.Evaluate([.. start.Content.Parts.Select(p => start.Amount.Kilograms * (double)p.Percent / 100)]);
        return new MassRate(Enumerable.Range(0, course.Parts.Count).Sum(i => course.Rate(i, BandEnd.Expected, 1)));
    }

    private static string Words(Band<MassRate> rate) => $"{SealVerdict.Grams(rate.Expected)} ({SealVerdict.Grams(rate.Low)} to {SealVerdict.Grams(rate.High)})";
}
