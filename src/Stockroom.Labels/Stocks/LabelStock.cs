using Stockroom.Labels.Drawings;

namespace Stockroom.Labels.Stocks;

/// <summary>A sheet of labels; all lengths in millimetres, labels counted row by row from the top left.</summary>
public sealed record LabelStock
{
    public required string Name { get; init; }

    public required string Description { get; init; }

    public required double PageWidthMm { get; init; }

    public required double PageHeightMm { get; init; }

    public required int Columns { get; init; }

    public required int Rows { get; init; }

    public required double LabelWidthMm { get; init; }

    public required double LabelHeightMm { get; init; }

    /// <summary>From the page's left edge to the first label.</summary>
    public required double LeftMm { get; init; }

    /// <summary>From the page's top edge to the first label.</summary>
    public required double TopMm { get; init; }

    /// <summary>From one label's left edge to the next one's.</summary>
    public required double PitchXMm { get; init; }

    /// <summary>From one label's top edge to the next one's.</summary>
    public required double PitchYMm { get; init; }

    /// <summary>Radius of the label's corners.</summary>
    public required double CornerMm { get; init; }

    /// <summary>Margin inside the label that stays white, so that a printer's offset does not cut anything off.</summary>
    public required double PaddingMm { get; init; }

    public int PerSheet => Columns * Rows;

    public double LabelAreaMm2 => LabelWidthMm * LabelHeightMm;

    /// <summary>Where label <paramref name="index"/> (0 to <see cref="PerSheet"/> - 1) lies on the page.</summary>
    public Box LabelBox(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, PerSheet);
        var (row, column) = Math.DivRem(index, Columns);
        return new Box(LeftMm + (column * PitchXMm), TopMm + (row * PitchYMm), LabelWidthMm, LabelHeightMm);
    }
}
