using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Losses.Paths;

/// <summary>
/// Permeation through a plastic body, liquid and saturated vapour alike over the whole inner surface. Metal lets nothing through,
/// glass nothing but helium. The rate is the steady one; until the wall's lag is over less comes through, which courses and dates count.
/// </summary>
public sealed class ThroughWall : ILossPath
{
    public string Name => "through the wall";

    public PathLoss Assess(LossState state)
    {
        if (state.Vessel.IsMetal)
            return PathLoss.Absent($"{state.Vessel.Material} lets nothing through");
        if (state.Vessel.IsGlass && state.Content.Pure?.Name != "helium")
            return PathLoss.Absent("glass lets nothing through but helium");
        if (state.Content.IsUnknown)
            return PathLoss.Unknown($"what the content is, is not known, so neither is what {state.Vessel.Material} lets through");
        var finding = WallPermeation.Through(state, state.Vessel.Material, state.Vessel.Wetted, state.Vessel.Wall);
        if (finding.Leaves.Count == 0)
        {
            return finding.NotListed.Count == 0
                ? PathLoss.Absent("nothing in the content is volatile enough to pass the wall")
                : PathLoss.Unknown($"how fast {string.Join(", ", finding.NotListed)} passes {state.Vessel.Material} is not in the tables");
        }

        return PathLoss.Through(
            PathRole.Direct,
            finding.Leaves,
            finding.Volatile,
            () => WallPermeation.Lags(state, state.Vessel.Material, state.Vessel.Wall),
            () => $"{state.Vessel.Wall.Millimetres:0.##} mm of {state.Vessel.Material} over {state.Vessel.Wetted.SquareCentimetres:0} cm2",
            finding.Source ?? new Provenance("Geankoplis, Transport Processes and Unit Operations, 3rd ed.", "section 6.5", "1993"));
    }
}
