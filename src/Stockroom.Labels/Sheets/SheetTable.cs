using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Pictograms;

namespace Stockroom.Labels.Sheets;

/// <summary>Sets a table row by row; its head comes again on every page, and no row is cut.</summary>
internal sealed class SheetTable
{
    private const double RuleMm = 0.15;
    private const double GapMm = 2;

    /// <summary>White above and below a row as a multiple of the type size.</summary>
    private const double PadEm = 0.25;

    private const double HeadingEm = 1.35;

    /// <summary>Side of a pictogram as a multiple of the type size.</summary>
    private const double MarkEm = 1.9;

    private readonly TableBlock _table;
    private readonly CleanText _clean;
    private readonly double _size;
    private readonly double _step;
    private readonly double[] _left;
    private readonly double[] _width;
    private readonly double _all;

    public SheetTable(TableBlock table, double scale, double width, CleanText clean)
    {
        (_table, _clean, _all) = (table, clean, width);
        _size = Math.Max(Legibility.SmallestTypeMm, table.SizeMm * scale);
        _step = _size * FlowArea.LineSpacing;
        var shares = table.Columns.Sum(c => c.Share);
        _left = new double[table.Columns.Count];
        _width = new double[table.Columns.Count];
        var x = 0.0;
        for (var i = 0; i < table.Columns.Count; i++)
        {
            _left[i] = x;
            var column = width * table.Columns[i].Share / shares;
            _width[i] = column - (i + 1 < table.Columns.Count ? GapMm : 0);
            x += column;
        }
    }

    public void Draw(SheetFlow flow)
    {
        var head = Set([.. _table.Columns.Select(c => (SheetCell)new WordsCell(c.Name, Face.Bold))]);
        for (var i = 0; i < _table.Rows.Count; i++)
        {
            var row = Set(_table.Rows[i]);
            var together = row.Height + (IsHeading(i) && i + 1 < _table.Rows.Count ? Set(_table.Rows[i + 1]).Height : 0);
            if (i == 0 || !flow.HasRoom(together))
            {
                flow.Need(head.Height + together);
                Put(flow, head, thick: true);
            }

            Put(flow, row, thick: false, rule: !IsHeading(i));
        }
    }

    private bool IsHeading(int row) => _table.Rows[row].Count == 1;

    private void Put(SheetFlow flow, SetRow row, bool thick, bool rule = true)
    {
        var at = flow.Take(row.Height);
        foreach (var item in row.Items)
        {
            flow.Draw(item.MovedBy(at.X, at.Y));
        }

        if (!rule)
        {
            return;
        }

        var y = at.Y + row.Height - RuleMm;
        flow.Draw(new StrokedPath(new PathBuilder().Move(at.X, y).Line(at.X + _all, y).Build(), Ink.Black, thick ? RuleMm * 2 : RuleMm / 1.5));
    }

    /// <summary>A row at the origin.</summary>
    private SetRow Set(IReadOnlyList<SheetCell> cells)
    {
        if (cells is [WordsCell heading])
        {
            return Heading(heading);
        }

        var items = new List<DrawingItem>();
        var height = _step;
        for (var i = 0; i < cells.Count; i++)
        {
            height = Math.Max(height, cells[i] switch
            {
                WordsCell words => Words(words, i, items),
                PictogramsCell pictograms => Marks(pictograms, i, items),
                _ => Box(i, items),
            });
        }

        return new SetRow([.. items.MovedBy(0, _size * PadEm)], height + (_size * PadEm * 2));
    }

    private SetRow Heading(WordsCell cell)
    {
        var size = _size * HeadingEm;
        var paragraph = new Paragraph(_clean.Of(cell.Text), Face.Bold);
        var lines = paragraph.Lines(size, _ => _all) ?? [];
        var font = LabelFont.Of(Face.Bold);
        var step = size * FlowArea.LineSpacing;
        var above = (size * 0.6) + ((step - (size * (font.AscentEm + font.DescentEm))) / 2) + (size * font.AscentEm);
        return new SetRow([.. lines.Select((l, i) => new TextRun(paragraph.Text[l], Face.Bold, size, new Position(0, above + (i * step))))], (size * 0.6) + (lines.Count * step));
    }

    private double Words(WordsCell cell, int column, List<DrawingItem> items)
    {
        var paragraph = new Paragraph(_clean.Of(cell.Text), cell.Face);
        if (paragraph.IsEmpty)
        {
            return 0;
        }

        var lines = paragraph.Lines(_size, _ => _width[column]) ?? [];
        var font = LabelFont.Of(cell.Face);
        var above = ((_step - (_size * (font.AscentEm + font.DescentEm))) / 2) + (_size * font.AscentEm);
        for (var i = 0; i < lines.Count; i++)
        {
            items.Add(new TextRun(paragraph.Text[lines[i]], cell.Face, _size, new Position(_left[column], (i * _step) + above)));
        }

        return lines.Count * _step;
    }

    private double Marks(PictogramsCell cell, int column, List<DrawingItem> items)
    {
        var side = Math.Max(Legibility.SmallestPictogramSideMm, _size * MarkEm);
        var edge = Pictogram.DiagonalMm(side);
        var perRow = Math.Max(1, (int)(_width[column] / edge));
        for (var i = 0; i < cell.Codes.Count; i++)
        {
            var (row, place) = Math.DivRem(i, perRow);
            items.Add(Pictogram.Draw(cell.Codes[i], side, new Position(_left[column] + (place * edge), (row * edge) + (_size * 0.1))));
        }

        return ((cell.Codes.Count + perRow - 1) / perRow * edge) + (_size * 0.1);
    }

    private double Box(int column, List<DrawingItem> items)
    {
        var box = new Box(_left[column] + (_size * 0.1), _size * 0.15, _size, _size);
        items.Add(new StrokedPath(new PathBuilder().Rectangle(box).Build(), Ink.Black, _size * 0.08));
        return _size * 1.3;
    }

    private sealed record SetRow(IReadOnlyList<DrawingItem> Items, double Height);
}
