using System.Collections.Immutable;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Book.Containers;

/// <summary>One physical thing on a shelf, as the ledger's entries make it. Amounts are booked, never computed losses.</summary>
public sealed record Container
{
    public required ContainerId Id { get; init; }

    /// <summary>As the catalogue names it; for an orphan what the keeper calls it.</summary>
    public required string ContentName { get; init; }

    /// <summary>Composition of a home-made mixture when it was booked; null where the catalogue knows the content by name.</summary>
    public IReadOnlyList<PartShare>? Parts { get; init; }

    public MatterState? State { get; init; }

    /// <summary>True if nobody knows what it is.</summary>
    public bool IsOrphan { get; init; }

    /// <summary>What is to be seen on an orphan.</summary>
    public string? Seen { get; init; }

    public string? FoundBy { get; init; }

    public string? Vessel { get; init; }

    public string? Closure { get; init; }

    /// <summary>Null without a cover.</summary>
    public Cover? Cover { get; init; }

    /// <summary>Depths of the present cover: when put on, topped up or measured.</summary>
    public ImmutableList<CoverDepth> CoverDepths { get; init; } = [];

    public string? Packing { get; init; }

    public required string PlaceId { get; init; }

    public required Lot Lot { get; init; }

    /// <summary>The quantity received, as typed.</summary>
    public string? Quantity { get; init; }

    public BookedDensity? Density { get; init; }

    /// <summary>Booked net mass in g: received and filled in, less draws. Weigh-ins do not change it. Null where unknown.</summary>
    public decimal? NetGrams { get; init; }

    public decimal? TareGrams { get; init; }

    /// <summary>The last gross mass on a balance in g, at receipt or by a weigh-in.</summary>
    public decimal? LastGrossGrams { get; init; }

    public ImmutableList<Weighing> Weighings { get; init; } = [];

    public ImmutableList<Draw> Draws { get; init; } = [];

    public ImmutableList<Fill> Fills { get; init; } = [];

    /// <summary>Covers put on, topped up and taken off, and the vessel closed anew, in the order of booking.</summary>
    public ImmutableList<Refitting> Refittings { get; init; } = [];

    public ImmutableList<Assay> Assays { get; init; } = [];

    /// <summary>The last test of each sort.</summary>
    public ImmutableSortedDictionary<string, TestResult> LastTested { get; init; } = ImmutableSortedDictionary.Create<string, TestResult>(StringComparer.Ordinal);

    /// <summary>Files kept with it, the first attached first; the keeper calls them by their place in this list, from 1.</summary>
    public ImmutableList<Attachment> Attachments { get; init; } = [];

    public required DateOnly ReceivedOn { get; init; }

    /// <summary>Day it was first opened; null if never.</summary>
    public DateOnly? OpenedOn { get; init; }

    public DateOnly? SealedOn { get; init; }

    /// <summary>Temperature of the gas over the content as it was last sealed, in degrees C; null where nobody said.</summary>
    public decimal? SealedAtCelsius { get; init; }

    /// <summary>Absolute pressure of that gas then, in bar, 0 for a vacuum; null where nobody said.</summary>
    public decimal? SealedAtBar { get; init; }

    /// <summary>Why nobody may touch it; null if it may be handled.</summary>
    public string? HandsOff { get; init; }

    /// <summary>Why the keeper wants it where it is; null where an arrangement may move it.</summary>
    public string? Pinned { get; init; }

    /// <summary>Least strength at which the keeper still wants to use it, per cent by mass of the part it is named for; null for the published one.</summary>
    public decimal? LeastPercent { get; init; }

    public DateOnly? LabelPrintedOn { get; init; }

    /// <summary>Edition of the hazards on the last label: eu, un or us; null where that was not kept.</summary>
    public string? LabelRules { get; init; }

    /// <summary>What stood on the last label; null where that was not kept.</summary>
    public ImmutableList<LabelSaying>? LabelSays { get; init; }

    public DateOnly? RetiredOn { get; init; }

    public string? RetiredBecause { get; init; }

    /// <summary>Numbers of the entries that made it so, corrections among them.</summary>
    public ImmutableList<long> History { get; init; } = [];

    public bool IsRetired => RetiredOn is not null;

    /// <summary>Day the content was made, where that was said; else the day it was received.</summary>
    public DateOnly MadeOn => Lot.MadeOn ?? ReceivedOn;

    /// <summary>Day of the last entry that changed it; an earlier one makes the book fold anew.</summary>
    internal DateOnly LastDay { get; init; } = DateOnly.MinValue;
}
