using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Loss through a liquid cover and then a gap, resistances in series each with its own area:
/// rate = c_sat / (L_cover/(D_liquid A_cover) + m L_gap/(D_gas A_gap)), m = c_sat in the cover / c in the gas over it.
/// In a well closed vessel the gap governs and a cover changes little.
/// Source: two-film theory, Bird, Stewart, Lightfoot, Transport Phenomena, 2nd ed., section 22.4.
/// Worked example: bromine under 10 mm of water, 1.2e-9 m2/s and 34.1 kg/m3, swept surface: 4.09e-6 kg/(m2 s).
/// </summary>
public static class CoverResistance
{
    /// <summary>Flux through a cover whose surface is swept clean.</summary>
    public static MassFlux Open(Diffusivity liquid, MassConcentration solubility, Length depth) =>
        new(liquid.SquareMetresPerSecond * solubility.KilogramsPerCubicMetre / depth.Metres);

    /// <summary>
    /// What share of the uncovered rate is left. The uncovered way out is stated as its conductance: mass rate per concentration in the gas.
    /// </summary>
    public static Fraction RateLeft(
        Diffusivity liquid, MassConcentration solubility, Length depth, Area surface, MassConcentration saturatedGas, VolumeRate wayOut)
    {
        var cover = depth.Metres / (liquid.SquareMetresPerSecond * surface.SquareMetres);
        var partition = solubility / saturatedGas;
        return new Fraction(1 / (1 + (cover * wayOut.CubicMetresPerSecond / partition)));
    }
}
