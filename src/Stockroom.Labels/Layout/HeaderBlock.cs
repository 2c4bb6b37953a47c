using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Layout;

/// <summary>Name of the content, formula or composition, and the warnings of the house.</summary>
internal static class HeaderBlock
{
    /// <summary>Share of the label's height that the name may take before it is made smaller.</summary>
    private const double TitleShare = 0.24;

    /// <summary>The same where no hazard has to be shown.</summary>
    private const double TitleShareAlone = 0.36;

    private const double SizeStep = 0.93;

    public static bool Place(FlowArea flow, LabelContent content, double paddingMm, Portion portion)
    {
        var height = flow.Area.Height;
        var largest = Math.Clamp(Math.Min(height * (content.HasHazards ? 0.11 : 0.14), flow.Area.Width * 0.08), 2.8, 10);
        var share = height * (content.HasHazards ? TitleShare : TitleShareAlone);
        if (!Title(flow, content.Name(portion.NameLength), paddingMm, largest, Math.Max(share, largest * FlowArea.LineSpacing), out var size))
        {
            return false;
        }

        if (portion.Note && !content.Note.IsEmpty)
        {
            if (!Note(flow, content.Note, Math.Clamp(size * 0.58, LabelDesign.SmallestTypeMm, 4.2)))
            {
                return false;
            }
        }

        return Tags(flow, [.. content.Extra.Take(portion.Extra)], Math.Clamp(height * 0.055, LabelDesign.SmallestTypeMm, 4));
    }

    /// <summary>Shrinks, then wraps, and cuts inside a word only at the smallest size.</summary>
    private static bool Title(
        FlowArea flow, Paragraph title, double paddingMm, double largest, double roomMm, out double size)
    {
        for (size = largest; size > LabelDesign.SmallestTypeMm; size *= SizeStep)
        {
            var (from, to) = flow.Free(flow.Y, size);
            if (title.LongestPieceEm * size > to - from)
            {
                continue;
            }

            flow.Y = flow.Area.Top - RaiseMm(size, paddingMm);
            var lines = (int)Math.Floor((roomMm / (size * FlowArea.LineSpacing)) + 1e-6);
            if (flow.Set(title, size, lines))
            {
                return true;
            }
        }

        size = LabelDesign.SmallestTypeMm;
        flow.Y = flow.Area.Top - RaiseMm(size, paddingMm);
        return flow.Set(title, size);
    }

    /// <summary>Lets the top of the capitals, rather than of the line, stand level with the top of the code.</summary>
    private static double RaiseMm(double size, double paddingMm)
    {
        var font = LabelFont.Of(Face.Bold);
        var above = (FlowArea.LineSpacing - font.AscentEm - font.DescentEm) / 2 + font.AscentEm - font.CapHeightEm;
        return Math.Min(above * size, paddingMm * 0.8);
    }

    private static bool Note(FlowArea flow, Paragraph note, double largest)
    {
        for (var size = largest; size > LabelDesign.SmallestTypeMm; size *= SizeStep)
        {
            if (flow.Set(note, size, mostLines: 1))
            {
                return true;
            }
        }

        return flow.Set(note, LabelDesign.SmallestTypeMm);
    }

    /// <summary>White words on black plates, as many in a row as fit.</summary>
    private static bool Tags(FlowArea flow, IReadOnlyList<string> tags, double largest)
    {
        if (tags.Count == 0)
        {
            return true;
        }

        var font = LabelFont.Of(Face.Bold);
        var size = largest;
        var widest = tags.Max(t => font.WidthMm(t, 1)) + 1.2;
        var (from, to) = flow.Free(flow.Y, size * 2);
        size = Math.Max(LabelDesign.SmallestTypeMm, Math.Min(size, (to - from) / widest));
        var (plate, gap) = (size * 1.5, size * 0.4);
        var (x, y) = (from, flow.Y + gap);
        foreach (var tag in tags)
        {
            var width = font.WidthMm(tag, size) + (size * 1.2);
            (_, to) = flow.Free(y, plate);
            if (x > from && x + width > to)
            {
                (x, y) = (from, y + plate + gap);
                (_, to) = flow.Free(y, plate);
            }

            if (x + width > to + 0.001 || y + plate > flow.Bottom)
            {
                return false;
            }

            var box = new Box(x, y, width, plate);
            var baseline = new Position(x + (size * 0.6), y + (plate / 2) + (size * font.CapHeightEm / 2));
            flow.Add(() => new Group("tag", box,
            [
                new FilledPath(new PathBuilder().RoundedRectangle(box, size * 0.25).Build(), Ink.Black),
                new TextRun(tag, Face.Bold, size, baseline, Ink.White),
            ]));
            x += width + gap;
        }

        flow.Y = y + plate;
        return true;
    }
}
