using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Designs;

/// <summary>How a design sets its parts.</summary>
public enum DesignLayout
{
    /// <summary>Name on top, code and id in a corner, hazards in the middle, particulars at the foot.</summary>
    Full,

    /// <summary>A few words and marks beside or above a code that holds the id alone.</summary>
    Mark,
}

/// <summary>Where the code stands.</summary>
public enum CodePlace
{
    TopRight,
    Right,
    Bottom,
}

/// <summary>How large something is: a share of the printed height and of its width, whichever is less, within bounds.</summary>
/// <param name="OfHeight">Share of the height inside the padding.</param>
/// <param name="OfWidth">Share of the width inside the padding.</param>
/// <param name="LeastMm">Not less.</param>
/// <param name="MostMm">Not more.</param>
public sealed record DesignSize(double OfHeight, double OfWidth, double LeastMm, double MostMm)
{
    public double At(double widthMm, double heightMm) => Math.Clamp(Math.Min(heightMm * OfHeight, widthMm * OfWidth), LeastMm, MostMm);
}

/// <summary>The largest sizes of a design's parts; type sizes in ems, pictograms by their side, the code with its quiet zone.</summary>
public sealed record DesignSizes
{
    public required DesignSize Name { get; init; }

    /// <summary>Of the name where no hazard is shown.</summary>
    public required DesignSize NameAlone { get; init; }

    public required DesignSize Formula { get; init; }

    public required DesignSize Warnings { get; init; }

    public required DesignSize SignalWord { get; init; }

    public required DesignSize Statements { get; init; }

    public required DesignSize Details { get; init; }

    /// <summary>Of the particulars where no hazard is shown.</summary>
    public required DesignSize DetailsAlone { get; init; }

    public required DesignSize Pictograms { get; init; }

    public required DesignSize Code { get; init; }
}

/// <summary>What goes where on a label, how large, and what gives way to what; read from a file.</summary>
public sealed record Design
{
    public required string Name { get; init; }

    public required string Description { get; init; }

    public required DesignLayout Layout { get; init; }

    /// <summary>Shapes of stock that it is for.</summary>
    public required IReadOnlyList<StockShape> Shapes { get; init; }

    /// <summary>Taken without being asked for; the others only by name.</summary>
    public required bool IsUsual { get; init; }

    /// <summary>Printed part of a label from which on it is taken.</summary>
    public required double LeastWidthMm { get; init; }

    public required double LeastHeightMm { get; init; }

    /// <summary>The design that takes over where not even <see cref="Always"/> fits; null for none.</summary>
    public required string? Smaller { get; init; }

    /// <summary>Where the code may stand, most wanted first.</summary>
    public required IReadOnlyList<CodePlace> CodeAt { get; init; }

    /// <summary>Parts of the head, from the top down.</summary>
    public required IReadOnlyList<LabelPart> Head { get; init; }

    /// <summary>Parts of the middle.</summary>
    public required IReadOnlyList<LabelPart> Hazards { get; init; }

    /// <summary>Particulars and small print, in the order in which they stand.</summary>
    public required IReadOnlyList<LabelPart> Foot { get; init; }

    /// <summary>Never left off.</summary>
    public required IReadOnlyList<LabelPart> Always { get; init; }

    /// <summary>The rest, most important first; the last are the first to go where room is short.</summary>
    public required IReadOnlyList<LabelPart> Priority { get; init; }

    /// <summary>Share of the height that the name may take before it is made smaller.</summary>
    public required double NameRoom { get; init; }

    public required double NameRoomAlone { get; init; }

    public required DesignSizes Sizes { get; init; }

    /// <summary>True where the design has a place for the part.</summary>
    public bool Shows(LabelPart part) => Always.Contains(part) || Priority.Contains(part);

    public bool IsFor(LabelStock stock) =>
        Shapes.Contains(stock.Shape) && stock.PrintWidthMm >= LeastWidthMm && stock.PrintHeightMm >= LeastHeightMm;
}
