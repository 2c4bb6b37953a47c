using Stockroom.Labels.Codes;
using Stockroom.Labels.Drawings;

namespace Stockroom.Labels.Layout;

/// <summary>Something that is not on the label.</summary>
/// <param name="What">Named so that the keeper can find it.</param>
/// <param name="Required">True where a label must show it (CLP Art. 17, or a warning of the house); false for particulars.</param>
/// <param name="ForRoom">True where a larger label would hold it; false where it was asked for otherwise, so that no size mends it.</param>
public sealed record LeftOff(string What, bool Required, bool ForRoom = true);

/// <summary>A laid-out label and an honest account of it.</summary>
public sealed record LabelFit
{
    /// <summary>Name of the design it was set by.</summary>
    public required string Design { get; init; }

    /// <summary>The reduction that was applied, with its clause; null where the label is whole.</summary>
    public string? Relief { get; init; }

    /// <summary>The label, its top left corner at 0, 0.</summary>
    public required Drawing Drawing { get; init; }

    /// <summary>Side of the square that each pictogram is; null without pictograms.</summary>
    public required double? PictogramSideMm { get; init; }

    /// <summary>Height of a lower-case x in the statements.</summary>
    public required double StatementXHeightMm { get; init; }

    /// <summary>The code on the label; null where not even the id fits.</summary>
    public required QrSymbol? Code { get; init; }

    public required IReadOnlyList<LeftOff> LeftOff { get; init; }

    /// <summary>What else the keeper should know, a line each: characters replaced, sizes under what a supplier's label needs.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>Where something required was left off: names of the stocks that hold it all, smallest label first.</summary>
    public IReadOnlyList<string> StocksThatWouldDo { get; init; } = [];

    /// <summary>True where everything required is on the label.</summary>
    public bool IsComplete => !LeftOff.Any(l => l.Required);

    /// <summary>True where something required was left off that a larger label would hold.</summary>
    public bool LacksRoom => LeftOff.Any(l => l.Required && l.ForRoom);
}
