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

    /// <summary>A liquid diffusivity near room temperature moved to another temperature.</summary>
    public static Diffusivity Scale(Diffusivity known, Temperature at, Temperature to) =>
        known * (to.Kelvin / at.Kelvin * Math.Exp(PerKelvinNearRoom * (to.Kelvin - at.Kelvin)));
}
