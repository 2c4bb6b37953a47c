using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// The ways out combined: leaks side by side behind whatever barrier stands before them, direct ways besides. The result holds
/// for one moment.
/// </summary>
internal sealed class LossNetwork
{
    private LossNetwork(IReadOnlyList<PathRate> paths, IReadOnlyDictionary<Substance, Band<MassRate>> byPart)
    {
        Paths = paths;
        ByPart = byPart;
        Total = BandMath.Sum(byPart.Values);
    }

    internal sealed record PathRate(string Path, PathLoss Finding, Band<MassRate> Rate);

    public IReadOnlyList<PathRate> Paths { get; }

    public IReadOnlyDictionary<Substance, Band<MassRate>> ByPart { get; }

    /// <summary>False where the way past the closure, which every vessel has, cannot be judged.</summary>
    public bool IsKnown => Paths[0].Finding.Verdict != PathVerdict.Unknown;

    /// <summary>Mass that leaves; strength lost is not in it.</summary>
    public Band<MassRate> Total { get; }

    public static LossNetwork At(LossState state)
    {
        var findings = LossPaths.All.Select(p => (p.Name, Loss: p.Assess(state))).ToList();
        var barrier = findings.Find(f => f.Loss.Barrier is not null).Loss?.Barrier;
        var leak = BandMath.Sum(Leaks(findings).SelectMany(l => l.Leaves).Select(l => l.Rate));
        var slowed = barrier?.Slow(leak) ?? leak;
        var paths = new List<PathRate>(findings.Count);
        var byPart = new Dictionary<Substance, List<Band<MassRate>>>();
        foreach (var (name, loss) in findings)
        {
            var rates = loss.Leaves.Select(l => l with { Rate = loss.Role == PathRole.Leak ? Scale(l.Rate, leak, slowed) : l.Rate }).ToList();
            paths.Add(new PathRate(name, loss, BandMath.Sum(rates.Select(r => r.Rate))));
            if (loss.Role == PathRole.Strength)
                continue;
            foreach (var r in rates)
            {
                if (!byPart.TryGetValue(r.Part, out var list))
                    byPart[r.Part] = list = [];
                list.Add(r.Rate);
            }
        }

        return new LossNetwork(paths, byPart.ToDictionary(p => p.Key, p => BandMath.Sum(p.Value)));
    }

    private static IEnumerable<PathLoss> Leaks(List<(string Name, PathLoss Loss)> findings) =>
        findings.Select(f => f.Loss).Where(l => l.Verdict == PathVerdict.Applies && l.Role == PathRole.Leak);

    // The barrier acts on all leaks together; each keeps its share.
    private static Band<MassRate> Scale(Band<MassRate> rate, Band<MassRate> leak, Band<MassRate> slowed) => new(
        Share(rate.Low, leak.Low, slowed.Low), Share(rate.Expected, leak.Expected, slowed.Expected), Share(rate.High, leak.High, slowed.High));

    private static MassRate Share(MassRate rate, MassRate leak, MassRate slowed) =>
        leak.KilogramsPerSecond > 0 ? rate * (slowed / leak) : rate;
}
