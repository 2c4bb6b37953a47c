using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// The ways out combined: leaks side by side behind the cover, what goes through the body besides, both behind an outer packing. The result
/// holds for one moment, or as the mean of a year at the place.
/// </summary>
internal sealed class LossNetwork
{
    private static readonly Band<double> Whole = new(1, 1, 1);

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
        for (var i = 0; i < findings.Length; i++)
            findings[i] = ways[i].Assess(state);
        var shares = BarrierShares.Of(findings);
        var paths = new PathRate[findings.Length];
        for (var i = 0; i < findings.Length; i++)
        {
            var (leaves, left) = (findings[i].Leaves, shares.Of(findings[i].Role));
            if (left != Whole && leaves.Count > 0)
                leaves = [.. leaves.Select(l => l with { Rate = Left(l.Rate, left) })];
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

    // A barrier acts together on all that it stands before; each way keeps its share.
    private static Band<MassRate> Left(Band<MassRate> rate, Band<double> left) =>
        new(rate.Low * left.Low, rate.Expected * left.Expected, rate.High * left.High);
}
