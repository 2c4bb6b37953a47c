using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Losses.Paths;

/// <summary>A seal drawn off in the flame is glass through and through: nothing leaves by it. Helium alone passes the glass itself.</summary>
public sealed class FlameSeal : ILossPath
{
    private static readonly Provenance Source = new("common practice", "-", "2026");

    public string Name => "flame seal";

    public PathLoss Assess(LossState state)
    {
        if (state.Closure.Mechanism != ClosureMechanism.Fused)
            return PathLoss.Absent("the vessel is not sealed in the flame");
        return PathLoss.Of(
            PathRole.Direct,
            [],
            () => state.Content.Pure?.Name == "helium"
                ? "the seal holds, but helium passes the glass: see through the wall"
                : "sealed in the flame: nothing leaves, as long as the glass is whole",
            Source);
    }
}
