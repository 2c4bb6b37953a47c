using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>A liquid cover in series before the leaks.</summary>
public sealed record CoverBarrier(CoverTransport Transport, Length Depth, Area Surface, MassConcentration SaturatedGas, Temperature At) : IBarrier
{
    /// <summary>The leaks' rate with the cover in place. The fast end takes the most soluble and most mobile, the slow end the least.</summary>
    public Band<MassRate> Slow(Band<MassRate> uncovered)
    {
        var d = WilkeChang.Scale(Transport.Diffusivity, CoverTransport.At, At);
        return new Band<MassRate>(
            At1(uncovered.Low, d / Transport.Spread.Factor, Transport.Solubility.Low),
            At1(uncovered.Expected, d, Transport.Solubility.Expected),
            At1(uncovered.High, d * Transport.Spread.Factor, Transport.Solubility.High));
    }

    public bool HoldsBody => false;

    /// <summary>Its resistance on the side of the gas: c L/(s D A).</summary>
    public FlowResistance Resistance => new(
        SaturatedGas.KilogramsPerCubicMetre * Depth.Metres
        / (Transport.Solubility.Expected.KilogramsPerCubicMetre * WilkeChang.Scale(Transport.Diffusivity, CoverTransport.At, At).SquareMetresPerSecond * Surface.SquareMetres));

    private MassRate At1(MassRate uncovered, Diffusivity d, MassConcentration solubility)
    {
        var wayOut = new VolumeRate(uncovered.KilogramsPerSecond / SaturatedGas.KilogramsPerCubicMetre);
        return uncovered * CoverResistance.RateLeft(d, solubility, Depth, Surface, SaturatedGas, wayOut).Value;
    }
}
