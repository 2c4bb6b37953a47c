using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Sheets;

/// <summary>A document of blocks that are set one below the other, over as many pages as it takes.</summary>
/// <param name="Title">At the top of the first page, and in the foot of every page.</param>
/// <param name="Foot">Stands in the foot beside the title, such as the date.</param>
/// <param name="Blocks">From the top down.</param>
public sealed record Sheet(string Title, string Foot, IReadOnlyList<SheetBlock> Blocks);

/// <summary>One block of a sheet; sizes are in millimetres and are made smaller with the whole sheet.</summary>
public abstract record SheetBlock;

/// <summary>Text over the full width; a heading stays with what follows it.</summary>
public sealed record WordsBlock(string Text, double SizeMm, Face Face = Face.Regular, double SpaceAboveMm = 1, bool IsHeading = false) : SheetBlock;

/// <summary>White words on a black plate over the full width.</summary>
public sealed record PlateBlock(string Text, double SizeMm) : SheetBlock;

/// <summary>Pictograms side by side, each with a few words under it.</summary>
public sealed record PictogramBlock(IReadOnlyList<(string Code, string Words)> Pictograms, double SideMm) : SheetBlock;

/// <summary>Rows under a head that is repeated on every page.</summary>
/// <param name="Columns">Name of each column and its share of the width.</param>
/// <param name="Rows">Cells in the order of the columns; a row of one cell is a heading over those that follow it.</param>
/// <param name="SizeMm">Type size.</param>
public sealed record TableBlock(IReadOnlyList<(string Name, double Share)> Columns, IReadOnlyList<IReadOnlyList<SheetCell>> Rows, double SizeMm) : SheetBlock;

/// <summary>What stands in a cell.</summary>
public abstract record SheetCell
{
    public static implicit operator SheetCell(string text) => new WordsCell(text);
}

public sealed record WordsCell(string Text, Face Face = Face.Regular) : SheetCell;

/// <summary>Pictograms as marks.</summary>
public sealed record PictogramsCell(IReadOnlyList<string> Codes) : SheetCell;

/// <summary>An empty box to tick.</summary>
public sealed record BoxCell : SheetCell;
