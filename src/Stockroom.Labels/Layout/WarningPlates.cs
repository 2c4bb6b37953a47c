using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Layout;

/// <summary>Warnings beside those of the GHS: white words on black plates, or black words in outlined ones, as many in a row as fit.</summary>
internal static class WarningPlates
{
    private const double OutlineMm = 0.35;

    public static bool Place(FlowArea flow, IReadOnlyList<string> words, double largest, bool outlined)
    {
        if (words.Count == 0)
        {
            return true;
        }

        var font = LabelFont.Of(Face.Bold);
        var size = largest;
        var widest = words.Max(t => font.WidthMm(t, 1)) + 1.2;
        var (from, to) = flow.Free(flow.Y, size * 2);
        size = Math.Max(Legibility.SmallestTypeMm, Math.Min(size, (to - from) / widest));
        var (plate, gap) = (size * 1.5, size * 0.4);
        var (x, y) = (from, flow.Y + gap);
        foreach (var word in words)
        {
            var width = font.WidthMm(word, size) + (size * 1.2);
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
            flow.Add(() => new Group("warning", box, [Plate(box, size, outlined), new TextRun(word, Face.Bold, size, baseline, outlined ? Ink.Black : Ink.White)]));
            x += width + gap;
        }

        flow.Y = y + plate;
        return true;
    }

    private static DrawingItem Plate(Box box, double size, bool outlined) => outlined
        ? new StrokedPath(new PathBuilder().RoundedRectangle(box.Inset(OutlineMm / 2), size * 0.25).Build(), Ink.Black, OutlineMm)
        : new FilledPath(new PathBuilder().RoundedRectangle(box, size * 0.25).Build(), Ink.Black);
}
