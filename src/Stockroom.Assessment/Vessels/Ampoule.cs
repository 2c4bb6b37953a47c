using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Vessels;

/// <summary>Glass of an ampoule.</summary>
public enum GlassKind
{
    Borosilicate = 0,
    SodaLime,
    Silica,
}

/// <summary>A flame-sealed tube: bore, wall, inside volume, and the gas that was sealed in with the content.</summary>
/// <remarks>SealedPressure: absolute pressure of the gas at sealing, 0 for a vacuum. SealedAt: temperature of that gas.</remarks>
public sealed record Ampoule(Length Bore, Length Wall, Volume Volume, GlassKind Glass, Pressure SealedPressure, Temperature SealedAt)
{
    /// <summary>Cubical expansion: three times 3.3e-6, 9e-6 and 0.55e-6 per kelvin (ISO 3585; usual soda-lime; silica).</summary>
    public ThermalExpansion Expansion => Glass switch
    {
        GlassKind.SodaLime => new ThermalExpansion(27e-6),
        GlassKind.Silica => new ThermalExpansion(1.65e-6),
        _ => new ThermalExpansion(9.9e-6),
    };

    public Volume VolumeAt(Temperature t) => Volume * (1 + (Expansion.PerKelvin * (t.Kelvin - 293.15)));

    /// <summary>The pressure across the wall that a flame-sealed tube may be trusted with: EN 1595 and Lame, derated three times
    /// for drawn ends and scratches, soda-lime by a further 1.4; a factor of 2 either way.</summary>
    public Band<Pressure> Strength
    {
        get
        {
            var outside = new Length(Bore.Metres + (2 * Wall.Metres));
            var stress = GlassTubeStrength.BorosilicateStress;
            var en = GlassTubeStrength.En1595(outside, Wall, stress);
            var lame = GlassTubeStrength.LameAllowable(Bore / 2, outside / 2, stress);
            var expected = (en < lame ? en : lame) / (Glass == GlassKind.SodaLime ? 3 * 1.4 : 3);
            return Band.Around(expected, Spread.Of(2));
        }
    }

    /// <summary>A tube of a length, as drawn off.</summary>
    public static Ampoule OfTube(Length bore, Length wall, Length length, GlassKind glass, Pressure sealedPressure, Temperature sealedAt) =>
        new(bore, wall, new Volume(Math.PI / 4 * bore.Metres * bore.Metres * length.Metres), glass, sealedPressure, sealedAt);

    /// <summary>A vessel of the table sealed in the flame with air at one atmosphere and 20 degrees C.</summary>
    public static Ampoule Of(Vessel vessel) => new(
        vessel.Bore,
        vessel.Wall,
        vessel.Volume,
        vessel.Material == "soda-lime glass" ? GlassKind.SodaLime : vessel.Material == "fused silica" ? GlassKind.Silica : GlassKind.Borosilicate,
        PhysicalConstants.StandardAtmosphere,
        Temperature.FromCelsius(20));
}
