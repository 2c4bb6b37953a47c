using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Layout;

/// <summary>The foot of the label: particulars of the container in columns over a fine rule, then the small print.</summary>
internal static class DetailsBlock
{
    private const double RuleMm = 0.2;
    private const double ColumnGapMm = 2.5;

    /// <summary>Columns are about this many ems wide.</summary>
    private const double ColumnEm = 13;

    /// <summary>Sets the foot upwards from the bottom and raises <see cref="FlowArea.Bottom"/>; false where it does not fit.</summary>
    public static bool Place(FlowArea flow, LabelContent content, Plan plan, double gap)
    {
        var details = content.Details.Take(plan.Portion.Details).ToList();
        var footnotes = content.Footnotes.Take(plan.Portion.Footnotes).ToList();
        if (details.Count == 0 && footnotes.Count == 0)
        {
            return true;
        }

        var size = plan.DetailMm;
        var smallPrint = Math.Max(LabelDesign.SmallestTypeMm, size * 0.8);
        var right = flow.Area.Right;
        for (var attempt = 0; attempt < 2; attempt++)
        {
            var width = right - flow.Area.Left;
            var rows = Rows(details, size, width);
            var notes = new Paragraph(string.Join(" · ", footnotes), Face.Regular).Lines(smallPrint, _ => width);
            if (rows is null || notes is null)
            {
                return false;
            }

            var step = size * FlowArea.LineSpacing;
            var noteStep = smallPrint * FlowArea.LineSpacing;
            var height = (rows.Count * step) + (notes.Count * noteStep) + (gap * 0.5) + RuleMm;
            var top = flow.Area.Bottom - height;
            if (flow.Free(top, height).To < right)
            {
                right = flow.Free(top, height).To;
                continue;
            }

            if (top < flow.Area.Top)
            {
                return false;
            }

            var rule = new PathBuilder().Move(flow.Area.Left, top).Line(right, top).Build();
            flow.Items.Add(new StrokedPath(rule, Ink.Black, RuleMm));
            var y = top + (gap * 0.5);
            foreach (var row in rows)
            {
                foreach (var (x, text, face) in row)
                {
                    flow.Items.Add(Run(text, face, size, flow.Area.Left + x, y));
                }

                y += step;
            }

            foreach (var line in notes)
            {
                flow.Items.Add(Run(line, Face.Regular, smallPrint, flow.Area.Left, y));
                y += noteStep;
            }

            flow.Bottom = top - (gap * 0.5);
            return true;
        }

        return false;
    }

    private static TextRun Run(string text, Face face, double size, double x, double top)
    {
        var font = LabelFont.Of(face);
        var slack = size * (FlowArea.LineSpacing - font.AscentEm - font.DescentEm) / 2;
        return new TextRun(text, face, size, new Position(x, top + slack + (size * font.AscentEm)));
    }

    /// <summary>Cells of each row; a particular too long for its column takes the next ones too, and wraps where a row is too short.</summary>
    private static List<List<(double X, string Text, Face Face)>>? Rows(IReadOnlyList<Detail> details, double size, double width)
    {
        var columns = Math.Max(1, (int)((width + ColumnGapMm) / ((ColumnEm * size) + ColumnGapMm)));
        var pitch = (width + ColumnGapMm) / columns;
        var rows = new List<List<(double X, string Text, Face Face)>>();
        var next = columns;
        foreach (var detail in details)
        {
            var label = detail.Label.Length == 0 ? string.Empty : detail.Label + " ";
            var labelWidth = LabelFont.Of(Face.Regular).WidthMm(label, size);
            var value = new Paragraph(detail.Value, Face.Bold);
            var total = labelWidth + (value.WidthEm * size);
            var span = Math.Min(columns, (int)Math.Ceiling((total + ColumnGapMm) / pitch - 1e-9));
            if (next + span > columns)
            {
                rows.Add([]);
                next = 0;
            }

            var x = next * pitch;
            var lines = value.Lines(size, _ => (span * pitch) - ColumnGapMm - labelWidth);
            if (lines is null)
            {
                return null;
            }

            if (label.Length > 0)
            {
                rows[^1].Add((x, label.TrimEnd(), Face.Regular));
            }

            rows[^1].Add((x + labelWidth, lines[0], Face.Bold));
            next += span;
            foreach (var line in lines.Skip(1))
            {
                rows.Add([(labelWidth, line, Face.Bold)]);
                next = columns;
            }
        }

        return rows;
    }
}
