namespace Stockroom.Chemistry.Hazards;

/// <summary>What was measured on the whole; null where it was not.</summary>
public sealed record Measured
{
    public static readonly Measured Nothing = new();

    public decimal? Ph { get; init; }

    /// <summary>Flash point in degrees Celsius, closed cup.</summary>
    public decimal? FlashPointCelsius { get; init; }

    /// <summary>Initial boiling point in degrees Celsius.</summary>
    public decimal? BoilingPointCelsius { get; init; }

    /// <summary>Kinematic viscosity at 40 degrees Celsius in mm2/s.</summary>
    public decimal? KinematicViscosity { get; init; }
}
