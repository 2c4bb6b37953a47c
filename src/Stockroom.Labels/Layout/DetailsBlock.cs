using Stockroom.Labels.Designs;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Layout;

/// <summary>The foot of the label: particulars of the container in columns over a fine rule, then the small print.</summary>
internal static class DetailsBlock
{
    private const double RuleMm = 0.2;

    /// <summary>Sets the foot upwards from the bottom and raises <see cref="FlowArea.Bottom"/>; false where it does not fit.</summary>
    public static bool Place(FlowArea flow, LabelContent content, Design design, Portion portion, double size, double gap)
    {
        var details = content.DetailsBy(design).Take(portion.Details).OrderBy(d => Rank(design, d.Part)).ToList();
        var footnotes = content.Footnotes.Take(portion.Footnotes).ToList();
        if (details.Count == 0 && footnotes.Count == 0)
        {
            return true;
        }

        var smallPrint = Math.Max(Legibility.SmallestTypeMm, size * 0.8);
        var smallText = new Paragraph(string.Join(" · ", footnotes), Face.Regular);
        var (left, right) = (flow.Area.Left, flow.Area.Right);
        for (var attempt = 0; attempt < 3; attempt++)
        {
            var width = right - left;
            var rows = DetailGrid.Of(details, size, width);
            var notes = smallText.Lines(smallPrint, _ => width);
            if (rows is null || notes is null)
            {
                return false;
            }

            var step = size * FlowArea.LineSpacing;
            var noteStep = smallPrint * FlowArea.LineSpacing;
            var noteGap = rows.Count > 0 && notes.Count > 0 ? gap * 0.25 : 0;
            var height = (rows.Count * step) + (notes.Count * noteStep) + noteGap + (gap * 0.5) + RuleMm;
            var top = flow.Area.Bottom - height;
            var free = flow.Free(top, height);
            if (free.To < right || free.From > left)
            {
                (left, right) = (Math.Max(left, free.From), Math.Min(right, free.To));
                continue;
            }

            if (top < flow.Area.Top)
            {
                return false;
            }

            var rule = new PathBuilder().Move(left + (RuleMm / 2), top + (RuleMm / 2)).Line(right - (RuleMm / 2), top + (RuleMm / 2)).Build();
            flow.Add(() => new StrokedPath(rule, Ink.Black, RuleMm));
            var y = top + (gap * 0.5);
            foreach (var cell in rows.Cells)
            {
                Run(flow, cell.Text, cell.Face, size, left + cell.X, y + (cell.Row * step));
            }

            y += (rows.Count * step) + noteGap;
            foreach (var line in notes)
            {
                Run(flow, smallText.Text[line], Face.Regular, smallPrint, left, y);
                y += noteStep;
            }

            flow.Bottom = top - (gap * 0.5);
            return true;
        }

        return false;
    }

    private static int Rank(Design design, LabelPart part)
    {
        for (var i = 0; i < design.Foot.Count; i++)
        {
            if (design.Foot[i] == part)
            {
                return i;
            }
        }

        return design.Foot.Count;
    }

    private static void Run(FlowArea flow, string text, Face face, double size, double x, double top)
    {
        var font = LabelFont.Of(face);
        var slack = size * (FlowArea.LineSpacing - font.AscentEm - font.DescentEm) / 2;
        var baseline = new Position(x, top + slack + (size * font.AscentEm));
        flow.Add(() => new TextRun(text, face, size, baseline));
    }
}
