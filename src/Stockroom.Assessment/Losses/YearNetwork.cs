using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>The ways out as the mean over a year at the place, at its mean temperature, and how the loss swings with the season.</summary>
internal sealed class YearNetwork
{
    private readonly Situation _situation;
    private readonly Fraction _swing;

    private YearNetwork(Situation situation, LossNetwork year, LossNetwork atMean, Fraction swing) =>
        (_situation, Year, AtMean, _swing) = (situation, year, atMean, swing);

    public LossNetwork Year { get; }

    public LossNetwork AtMean { get; }

    /// <summary>The season seen from a day on.</summary>
    public Season SeasonFrom(DateOnly day) => new(_swing, day, _situation.WarmestMonth);

    public static YearNetwork Of(Situation situation, PropertyFacts facts)
    {
        var atMean = LossNetwork.At(new LossState(situation, facts));
        if (Climate.IsSteady(situation))
            return new YearNetwork(situation, atMean, atMean, new Fraction(0));
        var moments = Climate.Moments(situation);
        var networks = new LossNetwork[moments.Count];
        for (var i = 0; i < networks.Length; i++)
            networks[i] = LossNetwork.At(new LossState(situation, facts, situation.Content, situation.Amount, moments[i]));
        return new YearNetwork(situation, Mean(atMean, networks, situation.Content.Parts), atMean, Swing(moments, networks));
    }

    // The logarithm of the rate over the cosine of the season, by the warmest and the coldest of the days that were looked at.
    private static Fraction Swing(List<Climate.Moment> moments, LossNetwork[] networks)
    {
        var (coolest, warmest) = (moments[0].DayMean, moments[^1].DayMean);
        if (coolest >= warmest)
            return new Fraction(0);
        var (cool, warm) = (0.0, 0.0);
        for (var i = 0; i < networks.Length; i++)
        {
            if (moments[i].DayMean == coolest)
                cool += networks[i].Total.Expected.KilogramsPerSecond;
            if (moments[i].DayMean == warmest)
                warm += networks[i].Total.Expected.KilogramsPerSecond;
        }

        var cosines = moments.Exists(m => m.DayMean > coolest && m.DayMean < warmest) ? Math.Sqrt(3) : Math.Sqrt(2);
        return new Fraction(cool > 0 && warm > 0 ? Math.Log(warm / cool) / cosines : 0);
    }

    private static LossNetwork Mean(LossNetwork atMean, LossNetwork[] moments, IReadOnlyList<Part> parts)
    {
        var paths = new LossNetwork.PathRate[atMean.Paths.Count];
        for (var i = 0; i < paths.Length; i++)
            paths[i] = Mean(i, atMean.Paths[i], moments, parts);
        return new LossNetwork(paths, parts);
    }

    // A way out that cannot be judged on a warm day cannot be judged for the year.
    private static LossNetwork.PathRate Mean(int path, LossNetwork.PathRate atMean, LossNetwork[] moments, IReadOnlyList<Part> parts)
    {
        PathLoss? applies = null;
        foreach (var moment in moments)
        {
            if (moment.Paths[path].Finding.Verdict == PathVerdict.Unknown)
                return moment.Paths[path];
            if (moment.Paths[path].Finding.Verdict == PathVerdict.Applies)
                applies ??= moment.Paths[path].Finding;
        }

        if (applies is null)
            return atMean;
        var leaves = new List<Leaving>(parts.Count);
        foreach (var part in parts)
        {
            var (low, expected, high) = (0.0, 0.0, 0.0);
            foreach (var moment in moments)
            {
                foreach (var leaving in moment.Paths[path].Leaves)
                {
                    if (!ReferenceEquals(leaving.Part, part.Substance))
                        continue;
                    low += leaving.Rate.Low.KilogramsPerSecond;
                    expected += leaving.Rate.Expected.KilogramsPerSecond;
                    high += leaving.Rate.High.KilogramsPerSecond;
                }
            }

            if (high > 0)
                leaves.Add(new Leaving(part.Substance, new Band<MassRate>(new(low / moments.Length), new(expected / moments.Length), new(high / moments.Length))));
        }

        return LossNetwork.PathRate.Of(atMean.Path, atMean.Finding.Verdict == PathVerdict.Applies ? atMean.Finding : applies, leaves);
    }
}
