using Stockroom.Chemistry.Hazards;
using Stockroom.Labels.Rules;

namespace Stockroom.Desk;

/// <summary>By which rules labels are printed, and what the keeper says about them.</summary>
internal sealed record LabelWishes
{
    public static LabelWishes Usual { get; } = new();

    public RuleSet Rules { get; init; } = RuleSet.Eu;

    /// <summary>The formatting rules of Regulation (EU) 2024/2865.</summary>
    public bool Formatting2024 { get; init; }

    /// <summary>Capacity of the package in mL where it is not that of the vessel.</summary>
    public decimal? PackageMillilitres { get; init; }

    /// <summary>The full label is on the outer packing or a tag.</summary>
    public bool FullLabelElsewhere { get; init; }

    /// <summary>The printer has no red.</summary>
    public bool Black { get; init; }

    /// <summary>The keeper's authority allows black frames for use inside the place.</summary>
    public bool Inside { get; init; }

    /// <summary>Name and telephone of the keeper, for the label.</summary>
    public string? Keeper { get; init; }

    public LabelDemands Demands(decimal? vesselMillilitres) =>
        DemandsOf.For(Rules, PackageMillilitres ?? vesselMillilitres, Formatting2024, Black ? FrameStyle.Black : FrameStyle.Red) with { BlackFramesAllowed = Inside };

    /// <summary>What labels print about their black frames.</summary>
    public IReadOnlyList<string> FrameRemarks => (Black, Inside) switch
    {
        (true, true) => ["Black frames: for use inside only."],
        (true, false) => ["The frames must be red."],
        _ => [],
    };
}
