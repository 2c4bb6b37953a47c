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

/// <summary>What was over the content when the glass was closed.</summary>
public enum TrappedGas
{
    Air = 0,
    Argon,
    Vacuum,
    Nitrogen,
}

/// <summary>A flame-sealed tube: bore, wall, inside volume, and the gas that was sealed in with the content.</summary>
/// <remarks>SealedPressure: absolute pressure of the gas at sealing, 0 for a vacuum. SealedAt: temperature of that gas.</remarks>
public sealed record Ampoule(Length Bore, Length Wall, Volume Volume, GlassKind Glass, Pressure SealedPressure, Temperature SealedAt)
{
    private const double FlameSealDerating = 3;
    private const double SodaLimeDerating = 1.4;

    public TrappedGas Gas { get; init; } = TrappedGas.Air;

    /// <summary>True where the gas over the content condensed as the tube was closed.</summary>
    public bool TrapsLiquidGas => SealedAt < Condenses;

    /// <summary>What was over the content, in words.</summary>
    public string GasName => Gas switch
    {
        TrappedGas.Argon => "argon",
        TrappedGas.Nitrogen => "nitrogen",
        _ => "air",
    };

    // Nitrogen boils at 77 K, argon and oxygen at 87 and 90 K: colder, what was over the content is itself a liquid in the tube.
    private Temperature Condenses => Gas switch
    {
        TrappedGas.Vacuum => new(0),
        TrappedGas.Nitrogen => new(78),
        _ => new(91),
    };

    /// <summary>Cubical expansion: three times 3.3e-6, 9e-6 and 0.55e-6 per kelvin (ISO 3585; usual soda-lime; silica).</summary>
    public ThermalExpansion Expansion => Glass switch
    {
        GlassKind.SodaLime => new ThermalExpansion(27e-6),
        GlassKind.Silica => new ThermalExpansion(1.65e-6),
        _ => new ThermalExpansion(9.9e-6),
    };

    /// <summary>Above this no strength is stated: strain points of 515 (ISO 3585), some 510 and 1000 degrees C, less a margin.</summary>
    public Temperature Softens => Temperature.FromCelsius(Glass switch
    {
        GlassKind.SodaLime => 400,
        GlassKind.Silica => 1000,
        _ => 450,
    });

    public string GlassName => Glass switch
    {
        GlassKind.SodaLime => "soda-lime glass",
        GlassKind.Silica => "fused silica",
        _ => "borosilicate glass",
    };

    public Volume VolumeAt(Temperature t) => Volume * (1 + (Expansion.PerKelvin * (t.Kelvin - 293.15)));

    /// <summary>What the table strength is divided by: 3 for flame-sealed ends and scratches, soda-lime by a further 1.4.</summary>
    public Fraction Derating => new(Glass == GlassKind.SodaLime ? FlameSealDerating * SodaLimeDerating : FlameSealDerating);

    /// <summary>The pressure across the wall that a flame-sealed tube may be trusted with: EN 1595 and Lame, derated; a factor of 2 either way.</summary>
    public Band<Pressure> Strength
    {
        get
        {
            var outside = new Length(Bore.Metres + (2 * Wall.Metres));
            var stress = GlassTubeStrength.BorosilicateStress;
            var en = GlassTubeStrength.En1595(outside, Wall, stress);
            var lame = GlassTubeStrength.LameAllowable(Bore / 2, outside / 2, stress);
            var expected = (en < lame ? en : lame) / Derating.Value;
            return Band.Around(expected, Spread.Of(2));
        }
    }

    /// <summary>The wall that a tube of this bore and glass would need for a strength; null where no wall is enough.</summary>
    public Length? WallFor(Pressure strength)
    {
        var x = strength.Pascals * Derating.Value / (2 * GlassTubeStrength.BorosilicateStress.Pascals);
        var wall = new Length(Bore.Metres * x / Math.Max(1 - x, 0.01));
        return x < 0.7 && (this with { Wall = wall }).Strength.Expected.Pascals >= strength.Pascals * 0.9 ? wall : null;
    }

    /// <summary>A tube of a length, as drawn off.</summary>
    public static Ampoule OfTube(Length bore, Length wall, Length length, GlassKind glass, Pressure sealedPressure, Temperature sealedAt) =>
        new(bore, wall, new Volume(Math.PI / 4 * bore.Metres * bore.Metres * length.Metres), glass, sealedPressure, sealedAt);

    /// <summary>
    /// A vessel of the table sealed in the flame: with the gas that covers its content, else air, at the pressure and temperature booked, else at
    /// one atmosphere and 20 degrees C.
    /// </summary>
    public static Ampoule Of(Situation situation)
    {
        var vessel = situation.Vessel;
        var pressure = situation.SealedGas ?? PhysicalConstants.StandardAtmosphere;
        return new(
            vessel.Bore,
            vessel.Wall,
            vessel.Volume,
            vessel.Material == "soda-lime glass" ? GlassKind.SodaLime : vessel.Material == "fused silica" ? GlassKind.Silica : GlassKind.Borosilicate,
            pressure,
            situation.SealedGasAt ?? Temperature.FromCelsius(20))
        {
            Gas = pressure.Pascals <= 0 ? TrappedGas.Vacuum : GasOver(situation.Cover),
        };
    }

    private static TrappedGas GasOver(Cover? cover) => cover is not { Kind: CoverKind.Gas } ? TrappedGas.Air : cover.Name switch
    {
        "argon" => TrappedGas.Argon,
        "nitrogen" => TrappedGas.Nitrogen,
        _ => throw new ArgumentException($"how {cover.Name} behaves in a closed tube is not known", nameof(cover)),
    };
}
