using Stockroom.Book.Containers;

namespace Stockroom.Assessment.Intake;

/// <summary>What a keeper says when something comes in, in the keeper's own words.</summary>
public sealed record IntakeRequest
{
    /// <summary>A name of the catalogue, with a strength where it is a solution; or "orphan" for something unknown.</summary>
    public required string Content { get; init; }

    /// <summary>What is seen on an orphan: "unknown corrosive liquid, label eaten away".</summary>
    public string? Seen { get; init; }

    public string? FoundBy { get; init; }

    /// <summary>Composition of a home-made mixture: "sodium hydroxide=10%; water=90%".</summary>
    public string? Mix { get; init; }

    /// <summary>Such as "20 mL"; null where it is not known.</summary>
    public string? Amount { get; init; }

    public string? Vessel { get; init; }

    public string? Closure { get; init; }

    public string? Cover { get; init; }

    public decimal? CoverDepthMillimetres { get; init; }

    public string? Packing { get; init; }

    /// <summary>Id of the place it is put in.</summary>
    public required string Place { get; init; }

    public LotOrigin How { get; init; } = LotOrigin.Bought;

    public string? Origin { get; init; }

    public decimal? GrossGrams { get; init; }

    public decimal? TareGrams { get; init; }

    public string? Note { get; init; }
}
