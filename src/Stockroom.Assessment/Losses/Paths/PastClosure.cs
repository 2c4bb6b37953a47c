using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Losses.Paths;

/// <summary>
/// Diffusion from the level through headspace and neck and past the closure: an even ring gap for a closed vessel, the neck for an
/// open one (Stefan flux; a content that is itself a gas by equimolar exchange). Uncertain tenfold either way until weighed.
/// </summary>
public sealed class PastClosure : ILossPath
{
    private static readonly Provenance Source = new("Bird, Stewart, Lightfoot, Transport Phenomena, 2nd ed.", "section 18.2, Stefan diffusion", "2002");

    internal const double NilPascals = 1e-9;

    public string Name => "past the closure";

    public PathLoss Assess(LossState state)
    {
        switch (state.Closure.Mechanism)
        {
            case ClosureMechanism.Fused:
                return PathLoss.Absent("the glass is closed in the flame: there is no gap");
            case ClosureMechanism.Valve:
                return PathLoss.Unknown("how tight the seat of a cylinder valve is, is not published; weigh to know");
        }

        if (state.Content.IsUnknown)
            return PathLoss.Unknown("what the content is, is not known");
        if (state.IsGas && state.Content.State == MatterState.Liquid)
            return PathLoss.Unknown($"it boils below {state.Temperature.Celsius:0} degrees C: not to be kept in a vessel that is not sealed for pressure");
        return state.IsGas ? OfGas(state) : OfVapour(state);
    }

    private static PathLoss OfVapour(LossState state)
    {
        var known = new List<Vapour>(state.Vapour.Count);
        foreach (var v in state.Vapour)
        {
            if (v.Pressure.IsKnown && state.Facts.MolarMass(v.Gas) is not null)
                known.Add(v);
        }

        if (known.Count == 0 && Involatile.Reason(state) is { } stays)
            return PathLoss.Absent(stays);
        if (known.Count == 0)
            return PathLoss.Unknown(state.Vapour.Count > 0 ? state.Vapour[0].Pressure.Reason ?? $"the molar mass of {state.Vapour[0].Gas.Name} is not known" : "no part of the content has a vapour pressure in the tables");
        var total = 0.0;
        foreach (var v in known)
            total += state.Over(v).Pascals;
        if (total < NilPascals)
            return PathLoss.Absent("its vapour pressure is below a billionth of a pascal");
        if (total >= LossState.Atmosphere.Pascals)
            return PathLoss.Unknown($"it boils at {state.Temperature.Celsius:0} degrees C (vapour pressure {total / 1e5:0.0} bar): not to be kept in a vessel that is not sealed for pressure");
        var drift = StefanFlux.DriftFactor(new Fraction(total / LossState.Atmosphere.Pascals)).Value;
        var way = ClosureGeometry.LengthOverArea(state);
        var (down, up) = ClosureGeometry.Uncertainty(state.Closure);
        var leaves = new List<Leaving>(known.Count);
        foreach (var v in known)
        {
            var driving = state.Driving(v).Pascals;
            var d = state.Facts.DiffusivityInAir(v.Gas, state.Temperature);
            var rate = d.Value!.Value.SquareMetresPerSecond * driving * drift / (PhysicalConstants.GasConstant * state.Temperature.Kelvin) * state.Facts.MolarMass(v.Gas)!.Value.KilogramsPerMole / way;
            var facts = v.Pressure.Spread.And(d.Spread);
            leaves.Add(new Leaving(v.Part, BandMath.Around(new MassRate(rate), down.And(facts), up.And(facts))));
        }

        return PathLoss.Of(PathRole.Leak, leaves, () => $"{Gap(state)}; vapour pressure {Kilopascals(total)} at {state.Temperature.Celsius:0.#} degrees C", Source);
    }

    private static PathLoss OfGas(LossState state)
    {
        if (state.Content.Pure is not { MolarMass: { } molarMass } gas)
            return PathLoss.Unknown("the molar mass of the gas is not known");
        var inside = Math.Min(state.GasPressure(gas).Pascals, LossState.Atmosphere.Pascals);
        var d = state.Facts.DiffusivityInAir(gas, state.Temperature);
        var flow = d.Value!.Value.SquareMetresPerSecond * inside / (PhysicalConstants.GasConstant * state.Temperature.Kelvin) * molarMass.KilogramsPerMole / ClosureGeometry.LengthOverArea(state);
        var (down, up) = ClosureGeometry.Uncertainty(state.Closure);
        var band = BandMath.Around(new MassRate(flow), down.And(d.Spread), up.And(d.Spread));
        return PathLoss.Of(PathRole.Leak, [new Leaving(gas, band)], () => $"{Gap(state)}; a gas changes places with the air outside", Source);
    }

    private static string Gap(LossState state) => state.Closure.Gap is { } gap
        ? $"a gap of about {gap.Expected.Micrometres:0.##} um round a {state.Vessel.NeckBore.Millimetres:0.#} mm neck, {state.Closure.Path!.Value.Millimetres:0.#} mm long, known to a factor of {ClosureGeometry.Uncertainty(state.Closure).Up.Factor:0} until weighed"
        : $"an open neck of {state.Vessel.NeckBore.Millimetres:0.#} mm";

    private static string Kilopascals(double pascals) => pascals >= 100 ? $"{pascals / 1000:0.0##} kPa" : $"{pascals:0.####} Pa";
}
