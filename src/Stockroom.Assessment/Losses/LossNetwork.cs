using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// The ways out combined: leaks side by side behind whatever barrier stands before them, direct ways besides. The result holds
/// for one moment, or as the mean of a year at the place.
/// </summary>
internal sealed class LossNetwork
{
    private readonly IReadOnlyList<Part> _parts;
    private Band<MassRate>? _total;
    private Band<MassRate>? _weighable;

    internal LossNetwork(IReadOnlyList<PathRate> paths, IReadOnlyList<Part> parts) => (Paths, _parts) = (paths, parts);

    /// <summary>One way out with its rate as a whole and part by part, the barrier counted.</summary>
    internal sealed record PathRate(string Path, PathLoss Finding, Band<MassRate> Rate, IReadOnlyList<Leaving> Leaves)
    {
        public static PathRate Of(string path, PathLoss finding, IReadOnlyList<Leaving> leaves) =>
            new(path, finding, leaves.Count switch { 0 => default, 1 => leaves[0].Rate, _ => BandMath.Linear(leaves.Select(l => l.Rate)) }, leaves);
    }

    public IReadOnlyList<PathRate> Paths { get; }

    /// <summary>False where the way past the closure, which every vessel has, cannot be judged.</summary>
    public bool IsKnown => Paths[0].Finding.Verdict != PathVerdict.Unknown;

    public bool IsComplete => Paths.All(p => p.Finding.Verdict != PathVerdict.Unknown);

    /// <summary>
    /// Content that goes; strength lost is not in it. One closure lets all its parts through, so the ends of their bands go together; ways
    /// out of different kind are independent.
    /// </summary>
    public Band<MassRate> Total => _total ??= Sum(true);

    /// <summary>The part of it that a balance can show.</summary>
    public Band<MassRate> Weighable => _weighable ??= Sum(false);

    public static LossNetwork At(LossState state)
    {
        var ways = LossPaths.All;
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
            paths[i] = PathRate.Of(ways[i].Name, findings[i], leaves);
        }

        return new LossNetwork(paths, state.Content.Parts);
    }

    private Band<MassRate> Sum(bool transmuted)
    {
        var (low, expected, high) = (0.0, 0.0, 0.0);
        foreach (var part in _parts)
        {
            var sum = BandMath.Sum(Of(part.Substance, transmuted));
            low += sum.Low.KilogramsPerSecond;
            expected += sum.Expected.KilogramsPerSecond;
            high += sum.High.KilogramsPerSecond;
        }

        return new Band<MassRate>(new(low), new(expected), new(high));
    }

    private List<Band<MassRate>> Of(Substance part, bool transmuted)
    {
        var rates = new List<Band<MassRate>>(2);
        foreach (var path in Paths)
        {
            if (path.Finding.Role == PathRole.Strength || (path.Finding.Role == PathRole.Transmuted && !transmuted))
                continue;
            foreach (var leaving in path.Leaves)
            {
                if (ReferenceEquals(leaving.Part, part))
                    rates.Add(leaving.Rate);
            }
        }

        return rates;
    }

    private static bool IsLeak(PathLoss loss) => loss.Verdict == PathVerdict.Applies && loss.Role == PathRole.Leak;

    // The barrier acts on all leaks together; each keeps its share.
    private static Band<MassRate> Scale(Band<MassRate> rate, Band<MassRate> leak, Band<MassRate> slowed) => new(
        Share(rate.Low, leak.Low, slowed.Low), Share(rate.Expected, leak.Expected, slowed.Expected), Share(rate.High, leak.High, slowed.High));

    private static MassRate Share(MassRate rate, MassRate leak, MassRate slowed) =>
        leak.KilogramsPerSecond > 0 ? rate * (slowed / leak) : rate;
}
