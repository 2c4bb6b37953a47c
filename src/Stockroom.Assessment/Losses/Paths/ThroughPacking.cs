using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses.Paths;

/// <summary>
/// Outer packing as a second wall in series behind all that leaves the vessel, past its closure or through a plastic body. The air in the
/// packing fills with vapour first, which takes hours to weeks and is not counted.
/// </summary>
public sealed class ThroughPacking : ILossPath
{
    public string Name => "through the outer packing";

    public PathLoss Assess(LossState state)
    {
        if (state.Situation.OuterPacking is not { } words)
            return PathLoss.Absent("there is no outer packing");
        if (OuterPackings.Find(words) is not { } packing)
            return PathLoss.Absent($"outer packing ({words}) is not one that the tables know: counted as no barrier");
        var vapour = state.Vapour.Where(v => v.Pressure.Value is { Pascals: > 0 }).MaxBy(v => v.Pressure.Value!.Value.Pascals);
        if (state.Content.IsUnknown || vapour is null || state.IsGas || state.Facts.MolarMass(vapour.Gas) is not { } molarMass)
            return PathLoss.Absent($"{packing.Name}: the content gives off no vapour that it could slow");
        var p = vapour.Pressure.Value!.Value;
        if (packing.Conductance(vapour.Gas, p, state.Temperature, state.Facts) is not { } conductance)
            return PathLoss.Absent($"{packing.Name}: how fast {vapour.Gas.Name} passes {packing.Film} is not in the tables; counted as no barrier");
        var driving = new MassConcentration(state.Vapour.Sum(v => state.Facts.MolarMass(v.Gas) is { } m ? GasLaw.Concentration(state.Driving(v), m, state.Temperature).KilogramsPerCubicMetre : 0));
        return PathLoss.ByBarrier(
            new PackingBarrier(conductance, driving),
            () => $"{packing.Name} in series behind closure and body alike: a gap of about {packing.Gap.Expected.Micrometres:0.##} um round {packing.Bore.Millimetres:0} mm{(packing.Film is { } film ? $" and {packing.FilmThickness!.Value.Millimetres:0.##} mm of {film}" : "")}",
            packing.Provenance);
    }
}
