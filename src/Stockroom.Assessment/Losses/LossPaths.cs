using Stockroom.Assessment.Losses.Paths;

namespace Stockroom.Assessment.Losses;

/// <summary>Every way out that is known, in the order in which they are shown.</summary>
public static class LossPaths
{
    public static IReadOnlyList<ILossPath> All { get; } =
    [
        new PastClosure(),
        new Breathing(),
        new ThroughLiner(),
        new ThroughWall(),
        new ThroughCover(),
        new ThroughPacking(),
        new FlameSeal(),
        new RadioactiveDecayPath(),
        new Decomposition(),
    ];
}
