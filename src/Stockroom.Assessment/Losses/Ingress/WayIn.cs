using Stockroom.Assessment.Losses.Paths;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses.Ingress;

/// <summary>
/// The ways in for a gas of the air as conductances side by side, in m3 of its vapour a second: the gap past the closure (D A/L), the daily
/// breath, liner and wall by permeability; a liquid cover in series behind them (D s A/L).
/// </summary>
internal static class WayIn
{
    private static readonly Spread Breath = Spread.Of(3);

    /// <summary>As a band; all zero where nothing passes.</summary>
    public static Band<VolumeRate> Of(LossState state, Substance gas, List<string> words)
    {
        var (low, expected, high) = (0.0, 0.0, 0.0);
        void Add(double rate, double down, double up)
        {
            low += rate / down;
            expected += rate;
            high += rate * up;
        }

        var gap = Gap(state, gas);
        var (closureDown, closureUp) = ClosureGeometry.Uncertainty(state.Closure);
        Add(gap, closureDown.Factor, closureUp.Factor);
        words.Add(state.Closure.Gap is null ? "an open neck" : "the gap past the closure");
        var breath = Breathes(state);
        Add(breath, Breath.Factor, Breath.Factor);
        if (breath > 0)
            words.Add("the daily breath");
        if (state.Closure is { Liner: { } liner, LinerThickness: { } thickness })
            Through(state, gas, liner, state.Vessel.NeckSection, thickness, "the liner", words, Add);
        if (!state.Vessel.IsGlass && !state.Vessel.IsMetal)
            Through(state, gas, state.Vessel.Material, state.Vessel.Wetted, state.Vessel.Wall, "the wall", words, Add);
        return new Band<VolumeRate>(new(low), new(expected), new(high));
    }

    /// <summary>Behind a liquid cover through which the gas must pass; the same where none slows it.</summary>
    public static Band<VolumeRate> BehindCover(LossState state, Band<VolumeRate> before, CoverGas passing)
    {
        var depth = state.Situation.CoverDepth?.Metres ?? 0;
        if (depth <= 0)
            return before;
        var cover = passing.Diffusivity.SquareMetresPerSecond * passing.Ratio.Value * state.Vessel.CrossSection.SquareMetres / depth;
        return new Band<VolumeRate>(
            Series(before.Low, new(cover / passing.Spread.Factor)), Series(before.Expected, new(cover)), Series(before.High, new(cover * passing.Spread.Factor)));
    }

    /// <summary>Behind an outer packing; the same where none is known.</summary>
    public static Band<VolumeRate> BehindPacking(LossState state, Band<VolumeRate> before, Substance gas, List<string> words)
    {
        if (OuterPackings.Find(state.Situation.OuterPacking) is not { } packing || packing.Conductance(gas, LossState.Atmosphere, state.Temperature, state.Facts) is not { } wall)
            return before;
        words.Insert(0, $"the {packing.Name}");
        return new Band<VolumeRate>(Series(before.Low, wall.Low), Series(before.Expected, wall.Expected), Series(before.High, wall.High));
    }

    private static VolumeRate Series(VolumeRate a, VolumeRate b) =>
        new(a.CubicMetresPerSecond <= 0 || b.CubicMetresPerSecond <= 0 ? 0 : 1 / ((1 / a.CubicMetresPerSecond) + (1 / b.CubicMetresPerSecond)));

    private static double Gap(LossState state, Substance gas) =>
        (state.Facts.DiffusivityInAir(gas, state.Temperature).Value?.SquareMetresPerSecond ?? 0) / ClosureGeometry.LengthOverArea(state);

    // Room air drawn in each night, where the gap lets it: what the content does not breathe out comes in.
    private static double Breathes(LossState state)
    {
        var swing = state.Situation.DailySwing.Kelvins;
        return swing > 0 && Breathing.Conducts(state, g => g.Expected)
            ? state.Headspace.CubicMetres * ((swing / state.Temperature.Kelvin) + Breathing.Barometer) / 86400
            : 0;
    }

    private static void Through(LossState state, Substance gas, string material, Area area, Length thickness, string way, List<string> words, Action<double, double, double> add)
    {
        if (state.Facts.Permeability(material, gas).FirstOrDefault(r => r.Gas is not null) is not { Gas: { } p } row)
            return;
        var warm = Permeation.TemperatureFactor(row.Activation, row.At, state.Temperature).Value;
        var rate = p.Expected.MolePerMetreSecondPascal * warm * area.SquareMetres / thickness.Metres * PhysicalConstants.GasConstant * state.Temperature.Kelvin;
        add(rate, p.Expected / p.Low, p.High / p.Expected);
        words.Add(way);
    }
}
