using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>Something in series before the leaks: a liquid cover, a second wall.</summary>
public interface IBarrier
{
    /// <summary>On the side of the gas.</summary>
    FlowResistance Resistance { get; }

    /// <summary>What is left of a rate with the barrier in its way.</summary>
    Band<MassRate> Slow(Band<MassRate> without);
}

/// <summary>A second wall: rate = 1/(1/rate without it + 1/(c G)), G its conductance and c the saturated vapour.</summary>
internal sealed class PackingBarrier(Band<VolumeRate> conductance, MassConcentration saturated) : IBarrier
{
    public FlowResistance Resistance => new(1 / conductance.Expected.CubicMetresPerSecond);

    public Band<MassRate> Slow(Band<MassRate> without) => new(
        Series(without.Low, conductance.Low), Series(without.Expected, conductance.Expected), Series(without.High, conductance.High));

    private MassRate Series(MassRate rate, VolumeRate wall)
    {
        var most = saturated.KilogramsPerCubicMetre * wall.CubicMetresPerSecond;
        return rate.KilogramsPerSecond <= 0 || most <= 0 ? default : new MassRate(1 / ((1 / rate.KilogramsPerSecond) + (1 / most)));
    }
}
