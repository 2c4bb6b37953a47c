using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>The worst that one vessel can do to a closed space: it breaks, all of it evaporates, and nobody opens the door.</summary>
internal static class AirBreakages
{
    private const double NegligiblePascals = 0.001;

    /// <summary>The gas that comes nearest to a danger; null where nothing of the content evaporates.</summary>
    public static AirBreakage? Of(Situation situation, PropertyFacts facts, AirSpace space)
    {
        var t = situation.Temperature;
        var state = new LossState(situation, facts);
        var all = new List<AirBreakage>();
        foreach (var vapour in state.Vapour.Where(v => v.Gas.Name != "water"))
        {
            if (facts.MolarMass(vapour.Gas) is not { } molarMass || Most(vapour, situation.Content, facts, t) is not { } most)
                continue;
            var mass = situation.Amount.Kilograms * (double)situation.Content.Parts.First(p => p.Substance == vapour.Part).Percent / 100;
            var c = new MassConcentration(Math.Min(mass / space.Volume.CubicMetres, GasLaw.Concentration(most, molarMass, t).KilogramsPerCubicMetre));
            var share = new Fraction(Math.Min(1, GasLaw.PartialPressure(c, molarMass, t) / PhysicalConstants.StandardAtmosphere));
            all.Add(new AirBreakage(
                vapour.Gas,
                c,
                share,
                Over(c, facts.StrictestLimit(vapour.Gas)),
                Over(c, facts.ExposureLimits(vapour.Gas).Where(l => !l.IsForDailyWork).MinBy(l => l.Concentration?.KilogramsPerCubicMetre ?? double.MaxValue)),
                facts.LowerFlammableLimit(vapour.Gas).Value is { } lower ? new Fraction(share / lower) : null,
                AirForecast.FreshOxygen * (1 - share.Value)));
        }

        return all.MaxBy(b => Math.Max(b.ShareOfDanger?.Value ?? 0, Math.Max(b.ShareOfLowerFlammableLimit?.Value ?? 0, 1 - (b.Oxygen / AirForecast.FreshOxygen))));
    }

    // At most the pressure at which it stands over the content; a gas on its own has none to hold it back.
    private static Pressure? Most(Vapour vapour, Content content, PropertyFacts facts, Temperature t)
    {
        if (content.Pure is not null && facts.StateAt(vapour.Gas, t) == MatterState.Gas)
            return PhysicalConstants.StandardAtmosphere;
        return vapour.Pressure.Value is { Pascals: > NegligiblePascals } p ? p : null;
    }

    private static Fraction? Over(MassConcentration c, ExposureLimit? limit) => limit?.Concentration is { } l ? new Fraction(c / l) : null;
}
