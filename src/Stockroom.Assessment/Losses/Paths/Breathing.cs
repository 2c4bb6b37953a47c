using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Losses.Paths;

/// <summary>
/// Each day's warming drives saturated gas out: V_out = V_head (dT/T + (p(Tmax) - p(Tmin))/(P - p(Tmax))), and the barometer about
/// 2 per cent of the headspace more. Only where the gap lets air through within half a day (viscous flow along the ring gap).
/// </summary>
public sealed class Breathing : ILossPath
{
    private const double AirViscosity = 1.82e-5;
    private const double HalfDay = 12 * 3600;
    internal const double Barometer = 0.02;

    private static readonly Spread Model = Spread.Of(3);
    private static readonly Provenance Source = new("gas law with saturated vapour; viscous flow in a ring gap, Bird, Stewart, Lightfoot, 2nd ed.", "section 2.4", "2002");

    public string Name => "breathing";

    public PathLoss Assess(LossState state)
    {
        var closure = state.Closure;
        if (closure.Mechanism is ClosureMechanism.Fused or ClosureMechanism.Valve)
            return PathLoss.Absent("nothing that breathes: the vessel is shut tight");
        if (state.Content.IsUnknown)
            return PathLoss.Unknown("what the content is, is not known");
        if (state.IsGas)
            return PathLoss.Absent("the content is a gas itself; see past the closure");
        var swing = state.Situation.DailySwing.Kelvins;
        if (swing <= 0)
            return PathLoss.Absent("no daily swing of temperature is given for the place");
        var conducts = new Band<bool>(Conducts(state, g => g.Low), Conducts(state, g => g.Expected), Conducts(state, g => g.High));
        if (!conducts.High)
            return PathLoss.Absent("the gap is too fine to let air through within half a day");
        if (state.Vapour.Count > 0 && state.Vapour.All(v => v.Pressure.Value is { Pascals: < PastClosure.NilPascals }))
            return PathLoss.Absent("its vapour pressure is below a billionth of a pascal");
        var leaves = Leaves(state, swing, conducts);
        return leaves is null
            ? PathLoss.Absent("the vapour pressure over the content is not known or reaches that of the air: see past the closure")
            : PathLoss.Of(PathRole.Leak, leaves, () => $"a daily swing of {swing:0.#} K drives saturated gas out of {state.Headspace.Millilitres:0} mL of headspace", Source);
    }

    private static List<Leaving>? Leaves(LossState state, double swing, Band<bool> conducts)
    {
        var warm = new Temperature(state.DayMean.Kelvin + (swing / 2));
        var cool = new Temperature(state.DayMean.Kelvin - (swing / 2));
        var (atWarm, atCool) = state.Swing is { } known
            ? (known.AtWarmest(state.Vapour), known.AtCoolest(state.Vapour))
            : (Vapours.Over(state.Content, warm, state.Facts), Vapours.Over(state.Content, cool, state.Facts));
        var (pWarm, pCool) = (Total(atWarm), Total(atCool));
        if (pWarm <= 0 || (state.Content.Pure is not null && pWarm >= LossState.Atmosphere.Pascals))
            return null;
        var expelled = state.Headspace.CubicMetres * ((swing / state.Temperature.Kelvin) + ((pWarm - pCool) / Math.Max(LossState.Atmosphere.Pascals - pWarm, 0.05 * LossState.Atmosphere.Pascals)) + Barometer);
        var leaves = new List<Leaving>();
        foreach (var v in atWarm)
        {
            if (!v.Pressure.IsKnown || state.Facts.MolarMass(v.Gas) is not { } molarMass)
                continue;
            var c = GasLaw.Concentration(state.Driving(v), molarMass, warm).KilogramsPerCubicMetre;
            var rate = new MassRate(c * expelled / 86400);
            var band = Band.Around(rate, Model.And(v.Pressure.Spread));
            leaves.Add(new Leaving(v.Part, new Band<MassRate>(conducts.Low ? band.Low : default, conducts.Expected ? band.Expected : default, band.High)));
        }

        return leaves;
    }

    private static double Total(IReadOnlyList<Vapour> vapours)
    {
        var sum = 0.0;
        foreach (var v in vapours)
            sum += v.Pressure.Value?.Pascals ?? 0;
        return sum;
    }

    internal static bool Conducts(LossState state, Func<Band<Length>, Length> pick)
    {
        if (state.Closure.Gap is not { } gap)
            return true;
        var conductance = Math.PI * state.Vessel.NeckBore.Metres * Math.Pow(pick(gap).Metres, 3) / (12 * AirViscosity * state.Closure.Path!.Value.Metres);
        return state.Headspace.CubicMetres / (conductance * LossState.Atmosphere.Pascals) < HalfDay;
    }
}
