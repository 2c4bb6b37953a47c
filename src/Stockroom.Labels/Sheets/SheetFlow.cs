using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Pictograms;

namespace Stockroom.Labels.Sheets;

/// <summary>Sets blocks one below the other and begins a new page where one is full.</summary>
internal sealed class SheetFlow
{
    private const double PlatePad = 0.45;

    private readonly SheetPaper _paper;
    private readonly double _scale;
    private readonly double _bottom;
    private readonly CleanText _clean = new();
    private double _y;

    public SheetFlow(SheetPaper paper, double scale, double bottomMm)
    {
        (_paper, _scale, _bottom) = (paper, scale, bottomMm);
        NewPage();
    }

    public List<List<DrawingItem>> Pages { get; } = [];

    private double Left => _paper.MarginMm;

    private double Width => _paper.WidthMm - (2 * _paper.MarginMm);

    private List<DrawingItem> Page => Pages[^1];

    /// <summary>Sets a block; one that is a heading goes to the next page with what follows it.</summary>
    public void Add(SheetBlock block, SheetBlock? next)
    {
        switch (block)
        {
            case WordsBlock words:
                Words(words, next);
                break;
            case PlateBlock plate:
                Plate(plate);
                break;
            case PictogramBlock pictograms:
                PictogramRow(pictograms);
                break;
            case TableBlock table:
                new SheetTable(table, _scale, Width, _clean).Draw(this);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(block), block.GetType().Name, "no such block");
        }
    }

    /// <summary>Begins a new page where this one has no room for that height.</summary>
    public void Need(double height)
    {
        if (!HasRoom(height) && _y > _paper.MarginMm)
        {
            NewPage();
        }
    }

    /// <summary>Where a piece of that height goes; on a new page where this one has no room for it.</summary>
    public Position Take(double height)
    {
        Need(height);
        var at = new Position(Left, _y);
        _y += height;
        return at;
    }

    public bool HasRoom(double height) => _y + height <= _bottom;

    public void Draw(DrawingItem item) => Page.Add(item);

    private void NewPage()
    {
        Pages.Add([]);
        _y = _paper.MarginMm;
    }

    private void Words(WordsBlock block, SheetBlock? next)
    {
        var size = block.SizeMm * _scale;
        var paragraph = new Paragraph(_clean.Of(block.Text), block.Face);
        var lines = paragraph.Lines(size, _ => Width) ?? [];
        var step = size * FlowArea.LineSpacing;
        var together = (lines.Count * step) + (block.IsHeading && next is not null ? Math.Max(step * 3, LeastOf(next)) : 0);
        if (_y > _paper.MarginMm)
        {
            _y += block.SpaceAboveMm * _scale;
        }

        if (block.IsHeading)
        {
            Need(together);
        }

        foreach (var line in lines)
        {
            Line(paragraph.Text[line], block.Face, size, Take(step), step, Ink.Black);
        }
    }

    /// <summary>Height without which a block does not begin.</summary>
    private double LeastOf(SheetBlock block) => block switch
    {
        TableBlock table => table.SizeMm * _scale * FlowArea.LineSpacing * 4,
        PictogramBlock pictograms => Pictogram.DiagonalMm(pictograms.SideMm * _scale) * 1.3,
        _ => 0,
    };

    private void Plate(PlateBlock block)
    {
        var size = block.SizeMm * _scale;
        var paragraph = new Paragraph(_clean.Of(block.Text), Face.Bold);
        var lines = paragraph.Lines(size, _ => Width - (2 * size * PlatePad)) ?? [];
        var step = size * FlowArea.LineSpacing;
        var gap = size * 0.35;
        var height = (lines.Count * step) + (2 * size * PlatePad);
        var at = Take(height + (2 * gap)).Offset(0, gap);
        var box = new Box(at.X, at.Y, Width, height);
        Draw(new FilledPath(new PathBuilder().RoundedRectangle(box, size * 0.3).Build(), Ink.Black));
        for (var i = 0; i < lines.Count; i++)
        {
            Line(paragraph.Text[lines[i]], Face.Bold, size, at.Offset(size * PlatePad, (size * PlatePad) + (i * step)), step, Ink.White);
        }
    }

    private void PictogramRow(PictogramBlock block)
    {
        var side = block.SideMm * _scale;
        var edge = Pictogram.DiagonalMm(side);
        var size = Math.Max(Legibility.SmallestTypeMm, side * 0.16);
        var step = size * FlowArea.LineSpacing;
        var pitch = edge * 1.08;
        var perRow = Math.Max(1, (int)(Width / pitch));
        foreach (var row in block.Pictograms.Chunk(perRow))
        {
            var at = Take(edge + step + (size * 0.6));
            for (var i = 0; i < row.Length; i++)
            {
                var corner = at.Offset(i * pitch, size * 0.3);
                Draw(Pictogram.Draw(row[i].Code, side, corner));
                var words = _clean.Of(row[i].Words);
                var width = LabelFont.Of(Face.Bold).WidthMm(words, size);
                Line(words, Face.Bold, size, corner.Offset((edge - width) / 2, edge), step, Ink.Black);
            }
        }
    }

    private void Line(string text, Face face, double size, Position at, double step, Ink ink)
    {
        var font = LabelFont.Of(face);
        var above = (step - (size * (font.AscentEm + font.DescentEm))) / 2;
        Draw(new TextRun(text, face, size, at.Offset(0, above + (size * font.AscentEm)), ink));
    }
}
