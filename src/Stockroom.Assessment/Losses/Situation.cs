using Stockroom.Book.Places;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment;

/// <summary>
/// What a judgement is made of: the content, what it stands in, where, and what was seen of it. Never an id, so that a
/// screen, a verb and a what-if ask the same question.
/// </summary>
public sealed record Situation
{
    public required Content Content { get; init; }

    /// <summary>Net mass of the content, cover not counted, on <see cref="AmountOn"/>.</summary>
    public required Mass Amount { get; init; }

    public required DateOnly AmountOn { get; init; }

    public required Vessel Vessel { get; init; }

    public required Closure Closure { get; init; }

    /// <summary>Null or the cover named none: nothing lies over the content.</summary>
    public Cover? Cover { get; init; }

    /// <summary>Depth of a liquid cover on <see cref="AmountOn"/>; null where nobody has measured it.</summary>
    public Length? CoverDepth { get; init; }

    /// <summary>A second wall around the vessel in words; null for none.</summary>
    public string? OuterPacking { get; init; }

    /// <summary>Mean temperature of the place over the year.</summary>
    public Temperature Temperature { get; init; } = Temperature.FromCelsius(20);

    /// <summary>From the coolest to the warmest of a usual day.</summary>
    public TemperatureChange DailySwing { get; init; }

    /// <summary>From the coolest to the warmest month of a usual year, each by its mean.</summary>
    public TemperatureChange SeasonalSwing { get; init; }

    /// <summary>Month whose days are the warmest, 1 to 12.</summary>
    public int WarmestMonth { get; init; } = 7;

    /// <summary>The warmest the place gets; null where it is not known.</summary>
    public Temperature? Warmest { get; init; }

    /// <summary>The coldest the place gets; null where it is not known.</summary>
    public Temperature? Coldest { get; init; }

    /// <summary>How much light falls on it; null where it is not known.</summary>
    public PlaceLight? Light { get; init; }

    /// <summary>Relative humidity of the room.</summary>
    public Fraction Humidity { get; init; } = new(0.5);

    /// <summary>The air that takes up what leaves; null where it is not described.</summary>
    public AirSpace? Air { get; init; }

    /// <summary>The room about a cabinet whose air <see cref="Air"/> is; null where that is the room's own.</summary>
    public AirSpace? RoomAir { get; init; }

    public DateOnly? Filled { get; init; }

    /// <summary>
    /// Day since which the content has stood in this vessel, or an earlier one; null where it is not known. Until a wall's lag from that day is
    /// over it lets less through.
    /// </summary>
    public DateOnly? InVesselSince { get; init; }

    public DateOnly? Sealed { get; init; }

    /// <summary>Absolute pressure of the gas over the content as it was sealed, 0 for a vacuum; null where nobody said.</summary>
    public Pressure? SealedGas { get; init; }

    /// <summary>Temperature of that gas then; null where nobody said.</summary>
    public Temperature? SealedGasAt { get; init; }

    public DateOnly? Opened { get; init; }

    /// <summary>Least share of the deciding part, by mass of the whole, at which the keeper still wants to use it; null for the published one.</summary>
    public Fraction? LeastStrength { get; init; }

    public IReadOnlyList<WeighIn> Weighings { get; init; } = [];

    public IReadOnlyList<Draw> Draws { get; init; } = [];

    public IReadOnlyList<DepthReading> CoverDepths { get; init; } = [];

    public bool HasLiquidCover => Cover?.Kind == CoverKind.Liquid;

    /// <summary>What a liquid cover fills, by its depth over the vessel's width.</summary>
    public Volume CoverVolume => HasLiquidCover ? new Volume((CoverDepth?.Metres ?? 0) * Vessel.CrossSection.SquareMetres) : default;
}

/// <summary>A dated gross mass and the readability of the balance (its smallest step).</summary>
public sealed record WeighIn(DateOnly On, Mass Gross, Mass Readability)
{
    /// <summary>Temperature at the balance; null where nobody read it.</summary>
    public Temperature? At { get; init; }

    /// <summary>Air pressure at the balance, not reduced to sea level; null where nobody read it.</summary>
    public Pressure? Air { get; init; }

    /// <summary>How far the balance may be out at that load, as last checked; null where it never was.</summary>
    public Mass? Calibration { get; init; }

    /// <summary>Place in the order of what happened on one day.</summary>
    public long Order { get; init; }
}

/// <summary>Something taken out or added between weighings, or a closure or cover put on or taken off; the amount may be unknown.</summary>
public sealed record Draw(DateOnly On, Mass? Amount)
{
    /// <summary>Place in the order of what happened on one day.</summary>
    public long Order { get; init; }
}

/// <summary>A measured depth of a cover.</summary>
public sealed record DepthReading(DateOnly On, Length Depth);

/// <summary>A closed space with its air changes per second.</summary>
public sealed record AirSpace(Volume Volume, RateConstant AirChange)
{
    /// <summary>How well its air mixes, 0.1 to 1.</summary>
    public Fraction Mixing { get; init; } = new(0.3);

    /// <summary>Fresh air.</summary>
    public VolumeRate Fresh => new(Volume.CubicMetres * AirChange.PerSecond);
}
