namespace Stockroom.Assessment.Neighbours;

/// <summary>A place by its id and the name the keeper knows it by.</summary>
public sealed record PlaceName(string Id, string Name)
{
    public override string ToString() => Name;
}

/// <summary>Where a thing stands: room, cabinet, shelf, tray, as far as known.</summary>
public sealed record Stand
{
    /// <summary>Null where the thing has no place.</summary>
    public PlaceName? Room { get; init; }

    /// <summary>Null where it stands in the open room.</summary>
    public PlaceName? Cabinet { get; init; }

    public PlaceName? Shelf { get; init; }

    public PlaceName? Tray { get; init; }

    /// <summary>Place of the cabinet in the row of its room; cabinets whose numbers differ by one are next to each other. Null where not known.</summary>
    public int? CabinetOrder { get; init; }

    /// <summary>Place of the shelf in its cabinet, counted from the floor up. Null where not known.</summary>
    public int? ShelfOrder { get; init; }

    /// <summary>True where the tray holds what a broken vessel in it would spill.</summary>
    public bool TrayIsLeakTight { get; init; } = true;

    /// <summary>True where a fan or an exhaust carries the cabinet's air away.</summary>
    public bool CabinetIsVentilated { get; init; }

    /// <summary>True for a thing in outer packing that holds what leaks, such as a capped can with absorbent: it stands as in a tray of its own.</summary>
    public bool IsInOwnPacking { get; init; }

    /// <summary>True where the place is known at all.</summary>
    public bool IsPlaced => Room is not null;
}

/// <summary>One thing on a shelf, as the finder needs it.</summary>
/// <param name="Key">The container's id.</param>
/// <param name="Label">What the keeper calls it; the content's name where it has no other.</param>
/// <param name="Profile">What its content is to neighbours.</param>
/// <param name="Stand">Where it stands.</param>
/// <param name="IsFlameSealed">True for a flame-sealed ampoule: it breathes nothing out and lets nothing in.</param>
public sealed record ShelfItem(string Key, string Label, ContactProfile Profile, Stand Stand, bool IsFlameSealed = false);
