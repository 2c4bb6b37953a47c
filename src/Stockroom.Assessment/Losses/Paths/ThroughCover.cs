using Stockroom.Chemistry.Properties;

namespace Stockroom.Assessment.Losses.Paths;

/// <summary>
/// A liquid cover stands in series before every way out of the vapour. It does not lower the vapour pressure; in a well closed
/// vessel the gap governs and the cover changes little. Its other service is to keep the content dry or out of the air.
/// </summary>
public sealed class ThroughCover : ILossPath
{
    public string Name => "through the cover";

    public PathLoss Assess(LossState state)
    {
        var situation = state.Situation;
        if (situation.Cover is not { } cover || cover.Kind == CoverKind.None)
            return PathLoss.Absent("there is no cover");
        if (cover.Kind == CoverKind.Gas)
            return PathLoss.Absent($"{cover.Name} {cover.Serves}; it does not slow a vapour");
        if (state.Content.Pure is not { } pure)
            return PathLoss.Absent($"a {cover.Name} cover over a mixture is not counted as a barrier");
        if (situation.CoverDepth is not { } depth || depth.Metres <= 0)
            return PathLoss.Unknown($"the depth of the {cover.Name} cover is not known; counted as no barrier");
        if (state.Facts.ThroughCover(pure, cover.Name) is not { } transport)
            return PathLoss.Absent($"{cover.Name} {cover.Serves}; how fast {pure.Name} passes it is not in the tables, so it is counted as no barrier");
        if (pure.MolarMass is not { } molarMass || state.Vapour[0].Pressure.Value is not { } p || p.Pascals <= 0)
            return PathLoss.Absent($"{cover.Name} {cover.Serves}; the vapour of {pure.Name} is not known");
        var barrier = new CoverBarrier(transport, depth, state.Vessel.CrossSection, GasLaw.Concentration(p, molarMass, state.Temperature), state.Temperature);
        return PathLoss.ByBarrier(
            barrier,
            () => $"{depth.Millimetres:0.#} mm of {cover.Name} over {state.Vessel.CrossSection.SquareCentimetres:0.#} cm2 in series; {cover.Serves}",
            transport.Provenance);
    }
}
