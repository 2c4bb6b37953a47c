using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Catalogue;

/// <summary>One part of a content: a substance and its share, in per cent by mass of the pure substance.</summary>
public sealed record Part(Substance Substance, decimal Percent);

/// <summary>
/// What a container holds: a pure substance, a preparation made of several, or something unknown (an orphan).
/// </summary>
public sealed record Content
{
    /// <summary>As the keeper reads it: "bromine", "hydrochloric acid 37%", "unknown corrosive liquid".</summary>
    public required string Name { get; init; }

    public required MatterState State { get; init; }

    /// <summary>The parts, largest hazard-bearing share not implied by the order; empty for an orphan.</summary>
    public required IReadOnlyList<Part> Parts { get; init; }

    /// <summary>True for an orphan: what it is, is not known, and it is judged as the worst it could be.</summary>
    public bool IsUnknown { get; init; }

    /// <summary>Density of a preparation near 20 degrees Celsius, where it is known.</summary>
    public Density? Density { get; init; }

    /// <summary>Moles of the first part in a litre, where the content is made and called by that.</summary>
    public decimal? MolesPerLitre { get; init; }

    /// <summary>What was assumed on the way from the words to the parts, or must be known of the content, each a sentence; empty for most.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    public Provenance? Provenance { get; init; }

    /// <summary>The substance, where the content is a single one.</summary>
    public Substance? Pure => Parts.Count == 1 ? Parts[0].Substance : null;

    /// <summary>Share of water in per cent by mass.</summary>
    public decimal WaterPercent => PercentOf("water");

    /// <summary>Share of a substance in per cent by mass; 0 where it is not a part.</summary>
    public decimal PercentOf(string substance)
    {
        var sum = 0m;
        foreach (var part in Parts)
        {
            if (part.Substance.Name == substance)
                sum += part.Percent;
        }

        return sum;
    }

    /// <summary>A single pure substance.</summary>
    public static Content Of(Substance substance) => new()
    {
        Name = substance.Name,
        State = substance.State,
        Parts = [new Part(substance, 100m)],
        Provenance = substance.Provenance,
    };

    /// <summary>An orphan: the words say what is seen, never what it is.</summary>
    public static Content Orphan(string seen, MatterState state) => new()
    {
        Name = seen,
        State = state,
        Parts = [],
        IsUnknown = true,
    };

    public override string ToString() => Name;
}
