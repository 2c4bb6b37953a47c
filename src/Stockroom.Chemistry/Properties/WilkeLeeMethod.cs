using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Wilke and Lee: D = (3.03 - 0.98/M^0.5) 1e-7 T^1.5/(P M^0.5 s^2 Omega), D in m2/s, P in bar, M = 2/(1/Ma + 1/Mb) in g/mol, s the
/// mean collision diameter in angstrom, Omega the collision integral at T/(ea eb)^0.5 (Neufeld). Low pressure; within some 6 %.
/// Source: Poling, Prausnitz, O'Connell, The Properties of Gases and Liquids, 5th ed., eq. 11-4.1 and 11-3.6.
/// Worked example: carbon disulfide in air at 273 K and 1 bar, 4.483 angstrom, 467 K: 9.52e-6 m2/s (Benitez, example 1.6).
/// </summary>
public static class WilkeLeeMethod
{
    private const double Angstrom = 1e-10;

    /// <summary>Of two gases by their collision diameters and the depths of their attraction as temperatures.</summary>
    public static Diffusivity Between(
        Temperature t, Pressure p, MolarMass a, Length diameterA, Temperature attractionA, MolarMass b, Length diameterB, Temperature attractionB)
    {
        var mean = 2 / ((1 / a.GramsPerMole) + (1 / b.GramsPerMole));
        var diameter = (diameterA.Metres + diameterB.Metres) / 2 / Angstrom;
        var omega = CollisionIntegral(t.Kelvin / Math.Sqrt(attractionA.Kelvin * attractionB.Kelvin));
        return new Diffusivity((3.03 - (0.98 / Math.Sqrt(mean))) * 1e-7 * Math.Pow(t.Kelvin, 1.5) / (p.Bar * Math.Sqrt(mean) * diameter * diameter * omega));
    }

    private static double CollisionIntegral(double t) =>
        (1.06036 / Math.Pow(t, 0.15610)) + (0.19300 / Math.Exp(0.47635 * t)) + (1.03587 / Math.Exp(1.52996 * t)) + (1.76474 / Math.Exp(3.89411 * t));
}
