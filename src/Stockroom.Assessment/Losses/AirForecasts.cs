using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// Steady concentration in a cabinet and in the room about it: two well-mixed boxes in series (see <see cref="WellMixedAir"/>); never above
/// saturation. Uncertain threefold beside the loss itself.
/// </summary>
internal static class AirForecasts
{
    private static readonly Spread Model = Spread.Of(3);

    /// <summary>On a day. Null where the place's air is not described or nothing nameable leaves.</summary>
    public static AirForecast? Of(Situation situation, PropertyFacts facts, Band<MassRate> rate, DateOnly on)
    {
        if (situation.Air is not { } air || situation.Content.IsUnknown)
            return null;
        var emissions = rate.High.KilogramsPerSecond > 0 ? AirEmission.Of(situation, facts) : [];
        var (radon, thoron) = RadonForecast.Of(situation, facts, on);
        var breakage = AirBreakages.Of(situation, facts, air);
        if (emissions.Count == 0 && radon is null && thoron is null && breakage is null)
            return null;
        var inner = In(situation, facts, rate, emissions, air, situation.RoomAir);
        var room = situation.RoomAir is { } outside ? In(situation, facts, rate, emissions, outside, null) : null;
        return inner with { Room = room, Breakage = breakage, Radon = radon, Thoron = thoron };
    }

    private static AirForecast In(
        Situation situation, PropertyFacts facts, Band<MassRate> rate, IReadOnlyList<(Substance Gas, double Share)> emissions, AirSpace space, AirSpace? around) =>
        new([.. emissions.Select(e => Gas(situation, facts, e.Gas, rate.Select(r => r * e.Share), space, around)).OrderByDescending(Nearness)]);

    private static double Nearness(AirGas gas) => gas.ShareOfLimit?.Expected.Value ?? gas.ShareOfLowerFlammableLimit?.Expected.Value ?? 0;

    private static AirGas Gas(Situation situation, PropertyFacts facts, Substance gas, Band<MassRate> rate, AirSpace space, AirSpace? around)
    {
        var t = situation.Temperature;
        var molarMass = facts.MolarMass(gas);
        var saturated = molarMass is { } m && facts.VapourPressure(gas, t).Value is { } p
            ? GasLaw.Concentration(p, m, t).KilogramsPerCubicMetre
            : double.PositiveInfinity;
        MassConcentration At(MassRate r)
        {
            var outer = around is null ? default : WellMixedAir.Steady(r, around.Fresh, around.Mixing);
            return new(Math.Min(WellMixedAir.SteadyWithin(outer, r, space.Fresh, space.Mixing).KilogramsPerCubicMetre, saturated));
        }

        var c = new Band<MassConcentration>(At(rate.Low / Model.Factor), At(rate.Expected), At(rate.High * Model.Factor));
        Band<Fraction>? share = molarMass is { } mass
            ? c.Select(x => new Fraction(Math.Min(1, GasLaw.Share(GasLaw.PartialPressure(x, mass, t), PhysicalConstants.StandardAtmosphere).Value)))
            : null;
        var limit = facts.StrictestLimit(gas);
        return new AirGas(
            gas,
            c,
            share,
            limit,
            limit?.Concentration is { } l ? c.Select(x => new Fraction(x / l)) : null,
            share is { } s && facts.LowerFlammableLimit(gas).Value is { } lower ? s.Select(x => new Fraction(x / lower)) : null);
    }
}
