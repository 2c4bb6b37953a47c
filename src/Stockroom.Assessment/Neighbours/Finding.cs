using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Neighbours;

/// <summary>Two containers that stand nearer than they may.</summary>
/// <param name="A">Key of the one.</param>
/// <param name="B">Key of the other.</param>
/// <param name="ALabel">What the keeper calls the one.</param>
/// <param name="BLabel">What the keeper calls the other.</param>
/// <param name="Stand">What separates them now.</param>
/// <param name="AIsAbove">True where the first stands on a shelf above the second.</param>
/// <param name="BIsAbove">True where the second stands on a shelf above the first.</param>
/// <param name="ABreathes">Where it is the air that harms: true if the first breathes out what harms the second, false if it is the other way round.</param>
public sealed record FoundPair(string A, string B, string ALabel, string BLabel, Separation Stand, bool AIsAbove, bool BIsAbove, bool? ABreathes = null);

/// <summary>One cause for which things stand wrong, with all pairs that it concerns.</summary>
public sealed record Finding
{
    /// <summary>One sentence for the keeper: what stands how near to what, and what it needs.</summary>
    public required string Cause { get; init; }

    /// <summary>The rule in a few words.</summary>
    public required string Rule { get; init; }

    /// <summary>What could happen, worst first.</summary>
    public required IReadOnlyList<string> Would { get; init; }

    public required string? Product { get; init; }

    public required Provenance Source { get; init; }

    /// <summary>False where the source was not read for this rule.</summary>
    public required bool Verified { get; init; }

    /// <summary>The least the pairs need.</summary>
    public required Separation Separation { get; init; }

    /// <summary>True where it is the shared air that harms.</summary>
    public required bool ByAir { get; init; }

    public required IReadOnlyList<FoundPair> Pairs { get; init; }
}
