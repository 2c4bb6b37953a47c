using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// Steady concentration in a well-mixed space: C = G/(k Q), Q volume times air change, k = 0.3 for poor mixing; never above
/// saturation. Uncertain threefold. Source: well-mixed room model, AIHA Mathematical Models for Estimating Occupational Exposure.
/// </summary>
internal static class AirForecasts
{
    private const double Mixing = 0.3;
    private static readonly Spread Model = Spread.Of(3);

    /// <summary>Null where the place's air is not described or nothing nameable leaves.</summary>
    public static AirForecast? Of(Situation situation, PropertyFacts facts, Band<MassRate> rate)
    {
        if (situation.Air is not { } air || situation.Content.IsUnknown || rate.High.KilogramsPerSecond <= 0)
            return null;
        var part = situation.Content.Pure ?? situation.Content.Parts.Where(p => p.Substance.Name != "water").MaxBy(p => p.Percent)?.Substance;
        if (part is null)
            return null;
        Substance gas = part.DissolvedFormOf is { } name ? facts.Catalogue[name] : part;
        var flow = Mixing * air.Volume.CubicMetres * air.AirChange.PerSecond;
        var saturated = gas.MolarMass is { } m && facts.VapourPressure(gas, situation.Temperature).Value is { } p
            ? GasLaw.Concentration(p, m, situation.Temperature).KilogramsPerCubicMetre
            : double.PositiveInfinity;
        MassConcentration At(double kilogramsPerSecond) => new(Math.Min(kilogramsPerSecond / flow, saturated));
        var c = new Band<MassConcentration>(
            At(rate.Low.KilogramsPerSecond / Model.Factor), At(rate.Expected.KilogramsPerSecond), At(rate.High.KilogramsPerSecond * Model.Factor));
        Band<Fraction>? share = gas.MolarMass is { } molarMass
            ? c.Select(x => GasLaw.Share(GasLaw.PartialPressure(x, molarMass, situation.Temperature), PhysicalConstants.StandardAtmosphere))
            : null;
        var limit = facts.StrictestLimit(gas);
        return new AirForecast(
            c,
            share,
            limit,
            limit?.Concentration is { } l ? new Fraction(c.Expected / l) : null,
            share is { } s && facts.LowerFlammableLimit(gas).Value is { } lower ? new Fraction(s.Expected / lower) : null);
    }
}
