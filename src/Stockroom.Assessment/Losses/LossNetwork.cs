using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// The ways out combined: leaks side by side behind whatever barrier stands before them, direct ways besides. The result holds
/// for one moment, or as the mean of a year at the place.
/// </summary>
internal sealed class LossNetwork
{
    private LossNetwork(IReadOnlyList<PathRate> paths, IReadOnlyList<Part> parts)
    {
        Paths = paths;
        Total = BandMath.Linear(parts.Select(p => BandMath.Sum(Of(p.Substance, _ => true))));
        Weighable = BandMath.Linear(parts.Select(p => BandMath.Sum(Of(p.Substance, r => r != PathRole.Transmuted))));
    }

    /// <summary>One way out with its rate as a whole and part by part, the barrier counted.</summary>
    internal sealed record PathRate(string Path, PathLoss Finding, Band<MassRate> Rate, IReadOnlyList<Leaving> Leaves);

    public IReadOnlyList<PathRate> Paths { get; }

    /// <summary>False where the way past the closure, which every vessel has, cannot be judged.</summary>
    public bool IsKnown => Paths[0].Finding.Verdict != PathVerdict.Unknown;

    public bool IsComplete => Paths.All(p => p.Finding.Verdict != PathVerdict.Unknown);

    /// <summary>
    /// Content that goes; strength lost is not in it. One closure lets all its parts through, so the ends of their bands go together; ways
    /// out of different kind are independent.
    /// </summary>
    public Band<MassRate> Total { get; }

    /// <summary>The part of it that a balance can show.</summary>
    public Band<MassRate> Weighable { get; }

    public static LossNetwork At(LossState state) => At(state, LossPaths.All);

    /// <summary>At one moment by some of the ways out only.</summary>
    public static LossNetwork At(LossState state, IReadOnlyList<ILossPath> ways)
    {
        var findings = new PathLoss[ways.Count];
        var barriers = new List<IBarrier>();
        for (var i = 0; i < findings.Length; i++)
        {
            findings[i] = ways[i].Assess(state);
            if (findings[i].Barrier is { } barrier)
                barriers.Add(barrier);
        }

        var leak = barriers.Count == 0 ? default : BandMath.Linear(findings.Where(IsLeak).SelectMany(l => l.Leaves).Select(l => l.Rate));
        var slowed = barriers.Aggregate(leak, (rate, barrier) => barrier.Slow(rate));
        var paths = new PathRate[findings.Length];
        for (var i = 0; i < findings.Length; i++)
        {
            var leaves = findings[i].Leaves;
            if (barriers.Count > 0 && IsLeak(findings[i]))
                leaves = [.. leaves.Select(l => l with { Rate = Scale(l.Rate, leak, slowed) })];
            paths[i] = Rate(ways[i].Name, findings[i], leaves);
        }

        return new LossNetwork(paths, state.Content.Parts);
    }

    /// <summary>The mean over a year at the place, and the network at the mean temperature from which it starts.</summary>
    public static (LossNetwork Year, LossNetwork AtMean) OverTheYear(Situation situation, PropertyFacts facts)
    {
        var atMean = At(new LossState(situation, facts));
        if (Climate.IsSteady(situation))
            return (atMean, atMean);
        var moments = Climate.Moments(situation).ConvertAll(m => At(new LossState(situation, facts, situation.Content, situation.Amount, m)));
        var paths = atMean.Paths.Select((p, i) => Mean(p, moments.ConvertAll(m => m.Paths[i]), situation.Content.Parts));
        return (new LossNetwork([.. paths], situation.Content.Parts), atMean);
    }

    // A way out that cannot be judged on a warm day cannot be judged for the year.
    private static PathRate Mean(PathRate atMean, List<PathRate> moments, IReadOnlyList<Part> parts)
    {
        if (moments.Find(m => m.Finding.Verdict == PathVerdict.Unknown) is { } unknown)
            return unknown;
        if (moments.Find(m => m.Finding.Verdict == PathVerdict.Applies) is not { } applies)
            return atMean;
        var leaves = new List<Leaving>(parts.Count);
        foreach (var part in parts)
        {
            var sum = BandMath.Linear(moments.SelectMany(m => m.Leaves).Where(l => l.Part == part.Substance).Select(l => l.Rate));
            if (sum.High.KilogramsPerSecond > 0)
                leaves.Add(new Leaving(part.Substance, sum.Select(r => r / moments.Count)));
        }

        return Rate(atMean.Path, atMean.Finding.Verdict == PathVerdict.Applies ? atMean.Finding : applies.Finding, leaves);
    }

    private static PathRate Rate(string path, PathLoss finding, IReadOnlyList<Leaving> leaves) =>
        new(path, finding, leaves.Count == 1 ? leaves[0].Rate : BandMath.Linear(leaves.Select(l => l.Rate)), leaves);

    private IEnumerable<Band<MassRate>> Of(Substance part, Func<PathRole, bool> counts)
    {
        foreach (var path in Paths)
        {
            if (path.Finding.Role == PathRole.Strength || !counts(path.Finding.Role))
                continue;
            foreach (var leaving in path.Leaves)
            {
                if (leaving.Part == part)
                    yield return leaving.Rate;
            }
        }
    }

    private static bool IsLeak(PathLoss loss) => loss.Verdict == PathVerdict.Applies && loss.Role == PathRole.Leak;

    // The barrier acts on all leaks together; each keeps its share.
    private static Band<MassRate> Scale(Band<MassRate> rate, Band<MassRate> leak, Band<MassRate> slowed) => new(
        Share(rate.Low, leak.Low, slowed.Low), Share(rate.Expected, leak.Expected, slowed.Expected), Share(rate.High, leak.High, slowed.High));

    private static MassRate Share(MassRate rate, MassRate leak, MassRate slowed) =>
        leak.KilogramsPerSecond > 0 ? rate * (slowed / leak) : rate;
}
