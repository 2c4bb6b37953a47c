namespace Stockroom.Assessment.Arrangement;

/// <summary>A proposal: what to move, in order, what stays unsafe, and what would help.</summary>
public sealed record Plan
{
    public static readonly Plan Empty = new();

    /// <summary>The moves in an order in which no step makes anything worse.</summary>
    public IReadOnlyList<Move> Moves { get; init; } = [];

    /// <summary>What finds no safe place; it stays where it is.</summary>
    public IReadOnlyList<Left> Left { get; init; } = [];

    /// <summary>Every container that nobody may touch, with what is done around it.</summary>
    public IReadOnlyList<Untouched> HandsOff { get; init; } = [];

    /// <summary>The smallest places that would take what is left.</summary>
    public IReadOnlyList<ExtraPlace> ExtraPlaces { get; init; } = [];

    /// <summary>What the proposal rests on and could not know; each a sentence.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>True where it is proven that no plan leaves fewer, or moves fewer and leaves as few.</summary>
    public bool IsProven { get; init; }

    /// <summary>Containers that end in another place; one that is parked on the way counts once.</summary>
    public int Relocated => Moves.Select(m => m.Key).Distinct(StringComparer.Ordinal).Count();
}

/// <summary>One step.</summary>
/// <param name="Key">Which container.</param>
/// <param name="From">Id of the spot it leaves; null where it had none.</param>
/// <param name="To">Id of the spot it is put in.</param>
/// <param name="Because">Why it leaves, and why there.</param>
/// <param name="IsParked">True where it waits there for a later move.</param>
public sealed record Move(string Key, string? From, string To, string Because, bool IsParked = false);

/// <summary>A container that finds no safe place.</summary>
public sealed record Left(string Key, string Because);

/// <summary>A container that nobody may touch.</summary>
/// <param name="Key">Which.</param>
/// <param name="Because">Why, and what the plan does near it.</param>
/// <param name="MovesNear">How many moves begin or end in its cabinet.</param>
public sealed record Untouched(string Key, string Because, int MovesNear);

/// <summary>A place that is not there and would do.</summary>
/// <param name="Kind">"tray" or a kind of cabinet.</param>
/// <param name="Inside">Id of the shelf or room in which it would stand.</param>
/// <param name="For">Containers that it would take.</param>
/// <param name="Because">In a sentence.</param>
public sealed record ExtraPlace(string Kind, string Inside, IReadOnlyList<string> For, string Because);

/// <summary>How much work a search may do. Steps are counted, not time, so that the same question gives the same answer.</summary>
/// <param name="Steps">Most placements tried.</param>
public sealed record Effort(long Steps)
{
    /// <summary>About a second for some hundreds of containers.</summary>
    public static readonly Effort Usual = new(9_000_000);

    /// <summary>About five seconds for some hundreds of containers.</summary>
    public static readonly Effort Thorough = new(80_000_000);
}

/// <summary>How far a search is.</summary>
/// <param name="Steps">Placements tried.</param>
/// <param name="Left">Containers left in the best found so far.</param>
/// <param name="Moves">Moves of the best found so far.</param>
public sealed record ArrangementProgress(long Steps, int Left, int Moves);
