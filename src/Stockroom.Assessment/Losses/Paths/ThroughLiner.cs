using Stockroom.Chemistry.Properties;

namespace Stockroom.Assessment.Losses.Paths;

/// <summary>Permeation of the saturated vapour through what covers the mouth: a liner, a septum, a bung.</summary>
public sealed class ThroughLiner : ILossPath
{
    public string Name => "through the liner";

    public PathLoss Assess(LossState state)
    {
        if (state.Closure.Liner is not { } liner || state.Closure.LinerThickness is not { } thickness)
            return PathLoss.Absent("the closure has no liner that lets anything through");
        if (state.Content.IsUnknown)
            return PathLoss.Unknown($"what the content is, is not known, so neither is what {liner} lets through");
        var finding = WallPermeation.Through(state, liner, state.Vessel.NeckSection, thickness);
        if (finding.Leaves.Count == 0)
        {
            return finding.NotListed.Count == 0
                ? PathLoss.Absent("nothing in the content is volatile enough to pass the liner")
                : PathLoss.Unknown($"how fast {string.Join(", ", finding.NotListed)} passes {liner} is not in the tables");
        }

        return PathLoss.Through(
            PathRole.Leak, finding.Leaves, finding.Volatile, () => WallPermeation.Lags(state, liner, thickness), () => $"{thickness.Millimetres:0.##} mm of {liner} over a {state.Vessel.NeckBore.Millimetres:0.#} mm mouth", finding.Source);
    }
}
