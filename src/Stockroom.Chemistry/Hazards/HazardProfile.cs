using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>What is known about a substance's hazards.</summary>
public enum HazardKnowledge
{
    /// <summary>Nothing: it is unclassified, which never means harmless.</summary>
    Unknown = 0,

    Classified,

    /// <summary>A source says that no classification applies.</summary>
    NotClassified,
}

/// <summary>Where a category comes from.</summary>
public enum EntryStatus
{
    Harmonised = 0,

    /// <summary>By a group entry ("lead compounds") that holds for members without an entry of their own.</summary>
    Group,

    /// <summary>No published entry: classified for this catalogue, and said so.</summary>
    Self,

    /// <summary>Stated by the one who asks.</summary>
    Given,

    /// <summary>Written into the book by the keeper; it wins over the catalogue.</summary>
    Own,
}

/// <summary>One category of a substance.</summary>
/// <param name="Category">Abbreviation of CLP Annex VI Table 1.1, such as "Skin Corr. 1B"; "EUH" for a supplemental statement alone.</param>
/// <param name="Statement">Its code, such as H314 or H360FD; empty where the category has none.</param>
/// <param name="Provenance">The entry.</param>
/// <param name="Minimum">True where Annex VI marks the category as a minimum.</param>
/// <param name="Organs">Organs affected, or the route, where the entry names them.</param>
/// <param name="LeavesOpen">What the entry does not settle.</param>
/// <param name="OverPercent">The entry is for strengths above this, in per cent by mass.</param>
/// <param name="UpToPercent">The entry is for strengths up to this.</param>
/// <param name="Status">Harmonised, by a group, self-classified or given.</param>
public sealed record AssignedCategory(
    string Category,
    string Statement,
    Provenance Provenance,
    bool Minimum = false,
    string? Organs = null,
    string? LeavesOpen = null,
    decimal? OverPercent = null,
    decimal? UpToPercent = null,
    EntryStatus Status = EntryStatus.Harmonised)
{
    public bool HoldsAt(decimal percent) => (OverPercent is null || percent > OverPercent) && (UpToPercent is null || percent <= UpToPercent);
}

/// <summary>A specific concentration limit: between its bounds the mixture has the category.</summary>
/// <param name="Category">Category that the band gives.</param>
/// <param name="Statement">Its code.</param>
/// <param name="FromPercent">Lower bound, per cent by mass.</param>
/// <param name="Above">True where the lower bound itself is not yet reached (C > limit).</param>
/// <param name="ToPercent">Upper bound; null where the band has none.</param>
/// <param name="ToIncluded">True where the upper bound still belongs to the band.</param>
/// <param name="Provenance">The entry.</param>
public sealed record ConcentrationLimit(
    string Category,
    string Statement,
    decimal FromPercent,
    bool Above,
    decimal? ToPercent,
    bool ToIncluded,
    Provenance Provenance)
{
    public bool Contains(decimal percent) =>
        (Above ? percent > FromPercent : percent >= FromPercent)
        && (ToPercent is null || (ToIncluded ? percent <= ToPercent : percent < ToPercent));
}

/// <summary>A point estimate of acute toxicity by one route, in the route's own unit.</summary>
public sealed record AcuteToxicityEstimate(
    ExposureRoute Route,
    decimal Value,
    Provenance Provenance,
    decimal? OverPercent = null,
    decimal? UpToPercent = null)
{
    public bool HoldsAt(decimal percent) => (OverPercent is null || percent > OverPercent) && (UpToPercent is null || percent <= UpToPercent);
}

/// <summary>Everything the classification needs to know about one ingredient.</summary>
public sealed record HazardProfile
{
    private ProfileIndex? _index;

    public required string Name { get; init; }

    public required HazardKnowledge Knowledge { get; init; }

    public IReadOnlyList<AssignedCategory> Categories { get; init; } = [];

    public IReadOnlyList<ConcentrationLimit> Limits { get; init; } = [];

    public IReadOnlyList<AcuteToxicityEstimate> Estimates { get; init; } = [];

    /// <summary>Multiplying factor for the acute aquatic sums; null where none is published.</summary>
    public decimal? AcuteFactor { get; init; }

    /// <summary>Multiplying factor for the chronic aquatic sums; null where none is published.</summary>
    public decimal? ChronicFactor { get; init; }

    /// <summary>Share of the substance that its concentration limits count (lead in lead nitrate); 1 for the whole.</summary>
    public decimal CountedShare { get; init; } = 1m;

    public string? CountedNote { get; init; }

    /// <summary>Group whose members are added up before a limit on reproductive toxicity; null for most.</summary>
    public string? SummedAs { get; init; }

    /// <summary>pH of the ingredient by itself, where it is given.</summary>
    public decimal? Ph { get; init; }

    /// <summary>Routes by which nothing is known, although the substance is classified otherwise.</summary>
    public IReadOnlyList<ExposureRoute> UnknownRoutes { get; init; } = [];

    /// <summary>Why no classification applies, where a source says so.</summary>
    public Provenance? NotClassifiedBy { get; init; }

    /// <summary>What belongs to which class.</summary>
    internal ProfileIndex Index => _index is { } index && index.IsOf(this) ? index : _index = new ProfileIndex(this);

    /// <summary>Said with every answer that rests on a profile of the keeper's own; null for the catalogue's.</summary>
    public string? OwnNote { get; init; }

    /// <summary>The categories that hold at a strength in per cent by mass.</summary>
    public IReadOnlyList<AssignedCategory> At(decimal percent) => Index.HasBounds ? [.. Categories.Where(c => c.HoldsAt(percent))] : Categories;
}
