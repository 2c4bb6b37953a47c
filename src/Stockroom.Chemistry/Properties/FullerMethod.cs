using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Fuller, Schettler, Giddings: D = 1.43e-7 T^1.75 / (P M^0.5 (va^(1/3) + vb^(1/3))^2), D in m2/s, P in bar,
/// M = 2/(1/Ma + 1/Mb) in g/mol, v the diffusion volumes. Low pressure, non-polar and moderately polar gases; mean error 8 %.
/// Source: Poling, Prausnitz, O'Connell, The Properties of Gases and Liquids, 5th ed., eq. 11-4.4.
/// Worked example: cyclohexane in air at 318.15 K, volume 123.12: 8.74e-6 m2/s (measured 8.6e-6).
/// </summary>
public static class FullerMethod
{
    private const double AirMolarMass = 28.97;
    private const double AirVolume = 19.7;

    /// <summary>Of a vapour in air at one atmosphere; the diffusion volume is a pure number of the method.</summary>
    public static Diffusivity InAir(Temperature t, MolarMass molarMass, DiffusionVolume volume) =>
        Between(t, PhysicalConstants.StandardAtmosphere, molarMass, volume, MolarMass.FromGramsPerMole(AirMolarMass), new DiffusionVolume(AirVolume));

    public static Diffusivity Between(Temperature t, Pressure p, MolarMass a, DiffusionVolume volumeA, MolarMass b, DiffusionVolume volumeB)
    {
        var mean = 2 / ((1 / a.GramsPerMole) + (1 / b.GramsPerMole));
        var size = Math.Cbrt(volumeA.Value) + Math.Cbrt(volumeB.Value);
        return new Diffusivity(1.43e-7 * Math.Pow(t.Kelvin, 1.75) / (p.Bar * Math.Sqrt(mean) * size * size));
    }

    /// <summary>
    /// The first form of 1966, with its own volumes: D = 1e-7 T^1.75 (1/Ma + 1/Mb)^0.5/(P (va^(1/3) + vb^(1/3))^2), P in atm.
    /// Source: Fuller, Schettler, Giddings, Ind. Eng. Chem. 58 (1966) 19. Worked example: butanol in air at 298.9 K: 9.03e-6 m2/s (Geankoplis 6.2-5).
    /// </summary>
    public static Diffusivity Of1966(Temperature t, Pressure p, MolarMass a, DiffusionVolume volumeA, MolarMass b, DiffusionVolume volumeB)
    {
        var size = Math.Cbrt(volumeA.Value) + Math.Cbrt(volumeB.Value);
        return new Diffusivity(1e-7 * Math.Pow(t.Kelvin, 1.75) * Math.Sqrt((1 / a.GramsPerMole) + (1 / b.GramsPerMole)) / (p / PhysicalConstants.StandardAtmosphere * size * size));
    }
}
