using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// A liquid that evaporates through the still gas of a tube, its level falling: t = rho (L2^2 - L1^2)/(2 M N L), N L the flux times
/// its path; turned round, the diffusion coefficient from a loss or a fall that was measured. A sphere that sublimes in still gas.
/// Source: Bird, Stewart, Lightfoot, Transport Phenomena, 2nd ed., section 18.2; Geankoplis, 3rd ed., sections 6.2B and 6.2D.
/// Worked examples: water, 1.23 g in 15 days through 40 cm of a 3 cm tube at 83.5 kPa: 3.06e-5 m2/s (Cengel 14.9);
/// naphthalene sphere of 2 mm radius at 318 K: 9.69e-5 mol/(m2 s) (Geankoplis 6.2-4).
/// </summary>
public static class StefanTube
{
    /// <summary>The coefficient that explains a measured flux.</summary>
    public static Diffusivity DiffusivityFrom(MolarFlux measured, Pressure total, Temperature t, Length path, Pressure inside, Pressure outside) =>
        new(measured / StefanFlux.Through(new Diffusivity(1), total, t, path, inside, outside));

    /// <summary>How long the level takes to fall from one depth below the mouth to another.</summary>
    public static Span TimeToFall(Diffusivity d, Pressure total, Temperature t, Density liquid, MolarMass molarMass, Length from, Length to, Pressure inside, Pressure outside)
    {
        var perPath = StefanFlux.Through(d, total, t, new Length(1), inside, outside).MolesPerSquareMetreSecond;
        var molar = liquid.KilogramsPerCubicMetre / molarMass.KilogramsPerMole;
        return new Span(molar * ((to.Metres * to.Metres) - (from.Metres * from.Metres)) / (2 * perPath));
    }

    /// <summary>The coefficient that explains a fall of the level in a time.</summary>
    public static Diffusivity DiffusivityFromFall(Span taken, Pressure total, Temperature t, Density liquid, MolarMass molarMass, Length from, Length to, Pressure inside, Pressure outside) =>
        new(TimeToFall(new Diffusivity(1), total, t, liquid, molarMass, from, to, inside, outside).Seconds / taken.Seconds);

    /// <summary>Flux at the face of a sphere in still gas without end: the path is its radius.</summary>
    public static MolarFlux Sphere(Diffusivity d, Pressure total, Temperature t, Length radius, Pressure inside, Pressure outside) =>
        StefanFlux.Through(d, total, t, radius, inside, outside);

    /// <summary>The thickness of still gas that explains a measured flux.</summary>
    public static Length FilmFrom(MolarFlux measured, Diffusivity d, Pressure total, Temperature t, Pressure inside, Pressure outside) =>
        new(StefanFlux.Through(d, total, t, new Length(1), inside, outside) / measured);
}
