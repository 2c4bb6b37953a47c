using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Diffusion in a dilute liquid solution scales as D2 = D1 (T2/T1)(mu1/mu2) (Wilke and Chang; Stokes and Einstein).
/// Source: Wilke and Chang, AIChE J. 1 (1955) 264. Good to 20 %, a factor of 3 into thick acids and oils.
/// In water the viscosity falls about 2 % a kelvin near 25 degrees C, so D rises about 2.4 %.
/// Worked example: 1.2e-9 m2/s at 298.15 K in water: 1.33e-9 at 303.15 K.
/// </summary>
public static class WilkeChang
{
    private const double PerKelvinNearRoom = 0.021;

    /// <summary>
    /// D = 1.173e-16 (phi M)^0.5 T/(mu V^0.6), D in m2/s, M of the solvent in g/mol, mu its viscosity in Pa s, V the molar volume of the
    /// solute at its boiling point in m3/kmol, phi 2.6 for water, 1.9 methanol, 1.5 ethanol, 1 for others.
    /// Worked example: acetone in water at 298 K, 0.074 m3/kmol: 1.277e-9 m2/s (Geankoplis 6.3-2).
    /// </summary>
    public static Diffusivity InLiquid(Temperature t, Viscosity solvent, MolarMass solventMass, Fraction association, DiffusionVolume boilingVolume) =>
        new(1.173e-16 * Math.Sqrt(association.Value * solventMass.GramsPerMole) * t.Kelvin / (solvent.PascalSeconds * Math.Pow(boilingVolume.Value, 0.6)));

    /// <summary>A liquid diffusivity near room temperature moved to another temperature.</summary>
    public static Diffusivity Scale(Diffusivity known, Temperature at, Temperature to) =>
        known * (to.Kelvin / at.Kelvin * Math.Exp(PerKelvinNearRoom * (to.Kelvin - at.Kelvin)));
}
