using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Layout;

/// <summary>A piece of a particular in the grid: row from 0, left edge in millimetres.</summary>
internal readonly record struct DetailCell(int Row, double X, string Text, Face Face);

/// <summary>Particulars in aligned columns. One too long for a column takes the next ones too, and wraps where a row is too short.</summary>
internal sealed record DetailGrid(IReadOnlyList<DetailCell> Cells, int Count)
{
    private const double GapMm = 2.5;

    /// <summary>Columns are about this many ems wide.</summary>
    private const double ColumnEm = 13;

    /// <summary>The grid at a type size and width, or null where a single letter is too wide.</summary>
    public static DetailGrid? Of(IReadOnlyList<Detail> details, double size, double width)
    {
        var columns = Math.Max(1, (int)((width + GapMm) / ((ColumnEm * size) + GapMm)));
        var pitch = (width + GapMm) / columns;
        var cells = new List<DetailCell>();
        var used = new List<int>();
        foreach (var detail in details)
        {
            var label = detail.Label.Length == 0 ? string.Empty : detail.Label + " ";
            var labelWidth = LabelFont.Of(Face.Regular).WidthMm(label, size);
            var value = new Paragraph(detail.Value, Face.Bold);
            var span = Math.Min(columns, (int)Math.Ceiling(((labelWidth + (value.WidthEm * size) + GapMm) / pitch) - 1e-9));

            // The first row with room takes it, so that short particulars fill the gaps beside long ones.
            var row = used.FindIndex(u => u + span <= columns);
            if (row < 0)
            {
                row = used.Count;
                used.Add(0);
            }

            var x = used[row] * pitch;
            var lines = value.Lines(size, _ => (span * pitch) - GapMm - labelWidth);
            if (lines is null)
            {
                return null;
            }

            if (label.Length > 0)
            {
                cells.Add(new DetailCell(row, x, detail.Label, Face.Regular));
            }

            cells.Add(new DetailCell(row, x + labelWidth, value.Text[lines[0]], Face.Bold));
            used[row] = lines.Count > 1 ? columns : used[row] + span;
            foreach (var line in lines.Skip(1))
            {
                cells.Add(new DetailCell(used.Count, x + labelWidth, value.Text[line], Face.Bold));
                used.Add(columns);
            }
        }

        return new DetailGrid(cells, used.Count);
    }
}
