using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// Water that a solution takes from the room while its own water presses less than the room's moisture does: the loss of pure water into dry
/// air by the same ways, times what the room's humidity is ahead of the solution's. Only where the pressure of water over the solution is
/// listed; Raoult's law would say of most what is not so.
/// </summary>
internal sealed class MoistureUptake
{
    private readonly Band<MassRate> _ofPureWater;
    private readonly Substance _substance;

    private MoistureUptake(int water, Substance substance, Band<MassRate> ofPureWater) => (Water, _substance, _ofPureWater) = (water, substance, ofPureWater);

    /// <summary>Index of water among the parts.</summary>
    public int Water { get; }

    /// <summary>Null where nothing is taken up at the start, or the tables cannot say.</summary>
    public static MoistureUptake? Of(Situation situation, PropertyFacts facts)
    {
        if (!MayTakeUp(situation, facts, out var water))
            return null;
        var substance = situation.Content.Parts[water].Substance;
        if (!situation.Content.Parts.Any(p => facts.SolutionPressure(p.Substance, substance, Fraction.FromPercent((double)p.Percent), situation.Temperature) is not null))
            return null;
        var pure = situation with { Content = Content.Of(substance), Humidity = new Fraction(0) };
        var rate = LossNetwork.At(new LossState(pure, facts)).Weighable;
        return rate.High.KilogramsPerSecond > 0 ? new MoistureUptake(water, substance, rate) : null;
    }

    /// <summary>True where its own water seems to press less than the room's moisture, by whatever is known of it.</summary>
    public static bool MayTakeUp(Situation situation, PropertyFacts facts) => MayTakeUp(situation, facts, out _);

    /// <summary>What comes in at a composition.</summary>
    public Band<MassRate> Into(LossState state)
    {
        var ahead = Ahead(state, _substance);
        return _ofPureWater.Select(r => r * ahead);
    }

    private static bool MayTakeUp(Situation situation, PropertyFacts facts, out int water)
    {
        var parts = situation.Content.Parts;
        water = -1;
        for (var i = 0; i < parts.Count && parts.Count > 1; i++)
            water = parts[i].Substance.Name == "water" ? i : water;
        return water >= 0 && situation.Content.State == MatterState.Liquid && !situation.HasLiquidCover
            && situation.Closure.Mechanism is not (ClosureMechanism.Fused or ClosureMechanism.Valve)
            && Ahead(new LossState(situation, facts), parts[water].Substance) > 0;
    }

    // The room's relative humidity less the water activity of the solution; never negative, as what leaves is counted by the ways out.
    private static double Ahead(LossState state, Substance water)
    {
        var own = state.Vapour.FirstOrDefault(v => ReferenceEquals(v.Part, water))?.Pressure.Value;
        var saturated = state.Facts.VapourPressure(water, state.Temperature).Value;
        return own is { } p && saturated is { } s ? Math.Max(0, state.Situation.Humidity.Value - (p.Pascals / s.Pascals)) : 0;
    }
}
