using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>Something in series before ways out: a liquid cover before the leaks, a second wall before all that leaves the vessel.</summary>
public interface IBarrier
{
    /// <summary>On the side of the gas.</summary>
    FlowResistance Resistance { get; }

    /// <summary>True where it stands before what goes through the vessel's body too, and not before the leaks alone.</summary>
    bool HoldsBody { get; }

    /// <summary>What is left of a rate with the barrier in its way.</summary>
    Band<MassRate> Slow(Band<MassRate> without);
}

/// <summary>A second wall: rate = 1/(1/rate without it + 1/(c G)), G its conductance and c the vapour that drives it, the room's own taken off.</summary>
internal sealed class PackingBarrier(Band<VolumeRate> conductance, MassConcentration driving) : IBarrier
{
    public FlowResistance Resistance => new(1 / conductance.Expected.CubicMetresPerSecond);

    public bool HoldsBody => true;

    public Band<MassRate> Slow(Band<MassRate> without) => new(
        Series(without.Low, conductance.Low), Series(without.Expected, conductance.Expected), Series(without.High, conductance.High));

    private MassRate Series(MassRate rate, VolumeRate wall)
    {
        var most = driving.KilogramsPerCubicMetre * wall.CubicMetresPerSecond;
        return rate.KilogramsPerSecond <= 0 || most <= 0 ? default : new MassRate(1 / ((1 / rate.KilogramsPerSecond) + (1 / most)));
    }
}
