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
        if (Climate.IsSteady(situation))
        {
            var steady = LossNetwork.At(new LossState(situation, facts));
            return new YearNetwork(situation, steady, steady, new Fraction(0));
        }

        var moments = Climate.Moments(situation);
        var networks = Array.ConvertAll(moments, m => LossNetwork.At(new LossState(situation, facts, situation.Content, situation.Amount, m)));
        return new YearNetwork(situation, Mean(moments, networks, situation.Content.Parts), networks[1], Swing(situation, moments, networks));
    }

    // The logarithm of the rate for each kelvin, by the outer two moments, times the season's half-swing.
    private static Fraction Swing(Situation situation, Climate.Moment[] moments, LossNetwork[] networks)
    {
        if (situation.SeasonalSwing.Kelvins <= 0)
            return new Fraction(0);
        var (cool, warm) = (networks[0].Total.Expected.KilogramsPerSecond, networks[2].Total.Expected.KilogramsPerSecond);
        var apart = moments[2].At.Kelvin - moments[0].At.Kelvin;
        return new Fraction(cool > 0 && warm > 0 ? Math.Log(warm / cool) / apart * situation.SeasonalSwing.Kelvins / 2 : 0);
    }

    private static LossNetwork Mean(Climate.Moment[] moments, LossNetwork[] networks, IReadOnlyList<Part> parts)
    {
        var paths = new LossNetwork.PathRate[networks[1].Paths.Count];
        for (var i = 0; i < paths.Length; i++)
            paths[i] = Mean(i, moments, networks, parts);
        return new LossNetwork(paths, parts);
    }

    // A way out that cannot be judged on a warm day cannot be judged for the year.
    private static LossNetwork.PathRate Mean(int path, Climate.Moment[] moments, LossNetwork[] networks, IReadOnlyList<Part> parts)
    {
        var atMean = networks[1].Paths[path];
        PathLoss? applies = null;
        foreach (var network in networks)
        {
            if (network.Paths[path].Finding.Verdict == PathVerdict.Unknown)
                return network.Paths[path];
            if (network.Paths[path].Finding.Verdict == PathVerdict.Applies)
                applies ??= network.Paths[path].Finding;
        }

        if (applies is null)
            return atMean;
        var leaves = new List<Leaving>(parts.Count);
        foreach (var part in parts)
        {
            var (low, expected, high) = (0.0, 0.0, 0.0);
            for (var i = 0; i < networks.Length; i++)
            {
                foreach (var leaving in networks[i].Paths[path].Leaves)
                {
                    if (!ReferenceEquals(leaving.Part, part.Substance))
                        continue;
                    low += moments[i].Weight * leaving.Rate.Low.KilogramsPerSecond;
                    expected += moments[i].Weight * leaving.Rate.Expected.KilogramsPerSecond;
                    high += moments[i].Weight * leaving.Rate.High.KilogramsPerSecond;
                }
            }

            if (high > 0)
                leaves.Add(new Leaving(part.Substance, new Band<MassRate>(new(low), new(expected), new(high))));
        }

        return LossNetwork.PathRate.Of(atMean.Path, atMean.Finding.Verdict == PathVerdict.Applies ? atMean.Finding : applies, leaves);
    }
}
