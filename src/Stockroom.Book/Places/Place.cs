namespace Stockroom.Book.Places;

/// <summary>A room, cabinet, shelf or tray; each but a room stands inside another.</summary>
public sealed record Place
{
    /// <summary>Short name without spaces by which verbs call it: "prep-acid-2".</summary>
    public required string Id { get; init; }

    public required string Name { get; init; }

    public required PlaceKind Kind { get; init; }

    /// <summary>Id of the place it stands in; null for a room.</summary>
    public string? Inside { get; init; }

    public PlaceLimits Limits { get; init; } = PlaceLimits.Unknown;

    public string? Note { get; init; }

    public PlaceLevel Level => Kind.Level;

    /// <summary>Day of the last entry that changed it; an earlier one makes the book fold anew.</summary>
    internal DateOnly LastDay { get; init; } = DateOnly.MinValue;

    public override string ToString() => Name;
}
