using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Diffusion of a vapour through stagnant gas: N = (D P/(R T L)) ln((P - p2)/(P - p1)); through gas that moves the other way
/// mole for mole: N = D (p1 - p2)/(R T L). p1 must lie below P: at P the liquid boils.
/// Source: Bird, Stewart, Lightfoot, Transport Phenomena, 2nd ed., section 18.2; Geankoplis, 3rd ed., section 6.2.
/// Worked example: water at 293 K, D 2.5e-5 m2/s, 152.4 mm of still air, 2338.5 Pa to dry air: 1.595e-4 mol/(m2 s) (Geankoplis 6.2-2).
/// </summary>
public static class StefanFlux
{
    /// <summary>Through gas that stands still.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The vapour pressure reaches the total pressure.</exception>
    public static MolarFlux Through(Diffusivity d, Pressure total, Temperature t, Length path, Pressure inside, Pressure outside)
    {
        if (inside >= total || outside >= total)
            throw new ArgumentOutOfRangeException(nameof(inside), inside.Pascals, "The vapour pressure must lie below the total pressure; at it the liquid boils.");
        return new MolarFlux(d.SquareMetresPerSecond * total.Pascals / (PhysicalConstants.GasConstant * t.Kelvin * path.Metres)
            * Math.Log((total.Pascals - outside.Pascals) / (total.Pascals - inside.Pascals)));
    }

    public static MolarFlux Equimolar(Diffusivity d, Temperature t, Length path, Pressure inside, Pressure outside) =>
        new(d.SquareMetresPerSecond * (inside.Pascals - outside.Pascals) / (PhysicalConstants.GasConstant * t.Kelvin * path.Metres));

    /// <summary>
    /// How much the drift of the gas adds to plain diffusion: ln(1/(1 - y))/y, y the mole fraction at the surface below 1; 1 for thin vapour.
    /// </summary>
    public static Fraction DriftFactor(Fraction atSurface)
    {
        var y = Math.Min(Math.Max(atSurface.Value, 0), 0.999);
        return new Fraction(y < 1e-6 ? 1 : -Math.Log(1 - y) / y);
    }
}
