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

    /// <summary>More than the closure explains, or much more than before: the seal fails.</summary>
    Failing,

    /// <summary>The mass rises: moisture or air goes in.</summary>
    Rising,
}

/// <summary>The measured loss against the forecast, with the reason in figures.</summary>
public sealed record SealVerdict(SealState State, MeasuredLoss? Measured, Band<MassRate>? Forecast, string Because)
{
    // A seal that now loses three times what it did, beyond doubt, has changed.
    private const double TimesBefore = 3;

    public static SealVerdict Of(Situation situation, PropertyFacts facts)
    {
        if (situation.Weighings.Count < 2)
            return new SealVerdict(SealState.NotEnough, null, null, "two weighings are needed");
        var measured = MeasuredLoss.Of(situation.Weighings, situation.Draws, situation.Vessel.OutsideVolume);
        if (measured is null)
            return new SealVerdict(SealState.NotEnough, null, null, "something was drawn between all weighings; weigh once more");
        var network = LossNetwork.At(new LossState(situation, facts));
        var complete = network.Paths.All(p => p.Finding.Verdict != PathVerdict.Unknown);
        var forecast = WithCover(situation, facts, network.Total);
        return Judge(measured, forecast, complete, situation);
    }

    private static SealVerdict Judge(MeasuredLoss m, Band<MassRate> f, bool complete, Situation situation)
    {
        var words = $"{Grams(m.Rate)} g a year lost ({Grams(m.Low)} to {Grams(m.High)}) from {m.Weighings} weighings {m.From:yyyy-MM-dd} to {m.To:yyyy-MM-dd}";
        var explained = $"{situation.Closure.Name} explains {Grams(f.Low)} to {Grams(f.High)}";
        var recent = m.Last ?? m;
        if (m.High.KilogramsPerSecond < 0 || recent.High.KilogramsPerSecond < 0)
            return new SealVerdict(SealState.Rising, m, f, $"the mass rises: {words}; moisture or air goes in");
        if (complete && recent.Low > f.High)
            return new SealVerdict(SealState.Failing, m, f, $"{words}, lately {Grams(recent.Rate)}; {explained}: the seal fails");
        if (complete && m.Low > f.High)
            return new SealVerdict(SealState.Failing, m, f, $"{words}; {explained}: the seal fails");
        if (m is { Before: { } before, Last: { } last } && last.Low > before.High && last.Rate.KilogramsPerSecond > TimesBefore * Math.Max(before.Rate.KilogramsPerSecond, before.Reach.KilogramsPerSecond / 2))
            return new SealVerdict(SealState.Failing, m, f, $"it lost {Grams(before.Rate)} g a year until {before.To:yyyy-MM-dd} and {Grams(last.Rate)} since: the seal has begun to leak");
        if (m.Low.KilogramsPerSecond <= 0)
            return new SealVerdict(SealState.NoChange, m, f, $"no change that the balance could show: {words}");
        return m.High < f.Low
            ? new SealVerdict(SealState.Below, m, f, $"{words}; {explained}: tighter than most, or something is taken up")
            : new SealVerdict(SealState.Within, m, f, $"{words}; {explained}");
    }

    // The gross mass falls by what the cover loses too.
    private static Band<MassRate> WithCover(Situation situation, PropertyFacts facts, Band<MassRate> content)
    {
        if (situation.Cover is not { Kind: CoverKind.Liquid, Content: { } name } || facts.Catalogue.Resolve(name).Content is not { } cover)
            return content;
        var asContent = situation with { Content = cover, Cover = null, CoverDepth = null };
        return BandMath.Sum([content, LossNetwork.At(new LossState(asContent, facts)).Total]);
    }

    private static string Grams(MassRate rate) => rate.GramsPerYear.ToString(Math.Abs(rate.GramsPerYear) >= 10 ? "0" : "0.###", System.Globalization.CultureInfo.InvariantCulture);
}
