using Stockroom.Labels.Drawings;

namespace Stockroom.Labels.Stocks;

/// <summary>What the labels come on.</summary>
public enum StockMedium
{
    /// <summary>A page of the printer's own paper size.</summary>
    Sheet,

    /// <summary>Labels one after another; each is a page.</summary>
    DieCutRoll,

    /// <summary>A band cut to length behind each label; each is a page.</summary>
    ContinuousRoll,
}

/// <summary>How a label is shaped and put on.</summary>
public enum StockShape
{
    Rectangle,

    /// <summary>A round label for a cap; its width is its diameter.</summary>
    Disc,

    /// <summary>Goes round a vial; its far end lies under the near one.</summary>
    Wrap,

    /// <summary>Goes round a neck or a thin ampoule, its two ends glued together as a flag printed on both sides.</summary>
    Flag,

    /// <summary>Not glued on, but stood or hung.</summary>
    Card,
}

/// <summary>A hazard frame that is printed on the stock in red already; the corner is that of the upright box around it.</summary>
/// <param name="SideMm">Side of the square on its point.</param>
/// <param name="LeftMm">From the label's left edge.</param>
/// <param name="TopMm">From the label's top edge.</param>
public sealed record StockFrame(double SideMm, double LeftMm, double TopMm)
{
    public Box Box => new(LeftMm, TopMm, SideMm * Math.Sqrt(2), SideMm * Math.Sqrt(2));
}

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

    public required StockMedium Medium { get; init; }

    public required StockShape Shape { get; init; }

    /// <summary>Of the vessel that a wrap or flag goes round; null for the other shapes.</summary>
    public required double? DiameterMm { get; init; }

    /// <summary>Red frames that the stock comes with; none of them may stay empty.</summary>
    public IReadOnlyList<StockFrame> Frames { get; init; } = [];

    /// <summary>Parts of a label that are printed, all alike, from its top left corner: one, but for a flag one on each side.</summary>
    public IReadOnlyList<Box> PrintAreas => Shape switch
    {
        // The square inside the circle.
        StockShape.Disc => [new Box(0, 0, LabelWidthMm, LabelHeightMm).Inset(LabelWidthMm * (1 - Math.Sqrt(0.5)) / 2)],

        // Once round; what is longer lies under the rest.
        StockShape.Wrap => [new Box(0, 0, CircumferenceMm, LabelHeightMm)],
        StockShape.Flag => [new Box(0, 0, FlagMm, LabelHeightMm), new Box(LabelWidthMm - FlagMm, 0, FlagMm, LabelHeightMm)],
        _ => [new Box(0, 0, LabelWidthMm, LabelHeightMm)],
    };

    public double PrintWidthMm => PrintAreas[0].Width;

    public double PrintHeightMm => PrintAreas[0].Height;

    internal double CircumferenceMm => Math.PI * (DiameterMm ?? 0);

    /// <summary>What remains on each side of the neck.</summary>
    internal double FlagMm => (LabelWidthMm - CircumferenceMm) / 2;

    /// <summary>
    /// The widest code that still reads round a vessel: there a reader sees the modules crowd towards the sides. Those of the smallest
    /// symbol (version 1) may take 0.9 of the diameter, an arc of about 100 degrees, those of larger ones 0.65, so that none is seen more
    /// than two thirds of a module from where it is looked for. Flat labels have no such bound.
    /// </summary>
    internal double MostCodeMm => Shape != StockShape.Wrap ? double.MaxValue
        : Math.Max(Math.Min(0.9 * (DiameterMm ?? 0) * 29 / 21, SmallestSymbolMm), 0.65 * (DiameterMm ?? 0) * 37 / 29);

    /// <summary>Version 1 with its quiet zone at three dots a module.</summary>
    private const double SmallestSymbolMm = 11;

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
