using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Output;

/// <summary>Turns drawings into a PDF: vector paths, selectable text in an embedded subset of the label font.</summary>
public static class PdfRenderer
{
    /// <summary>72 points to the inch, 25.4 mm to the inch.</summary>
    private const double PointsPerMm = 72.0 / 25.4;

    private static readonly XPdfFontOptions Subset = new(PdfFontEncoding.Unicode, PdfFontEmbedding.TryComputeSubset);

    /// <summary>Writes one page for each drawing, of the drawing's size.</summary>
    /// <param name="pages">At least one drawing.</param>
    /// <param name="title">Document title, shown by readers in place of a file name.</param>
    /// <param name="createdAt">Date kept in the document.</param>
    /// <param name="output">Left open.</param>
    /// <param name="language">BCP 47 tag of the text.</param>
    public static void Write(
        IReadOnlyList<Drawing> pages, string title, DateTimeOffset createdAt, Stream output, string language = "en")
    {
        if (pages.Count == 0)
        {
            throw new ArgumentException("a document needs at least one page", nameof(pages));
        }

        EmbeddedFontResolver.Register();
        using var document = new PdfDocument();
        document.Info.Title = title;
        document.Info.Creator = "Stockroom";
        document.Info.CreationDate = createdAt.UtcDateTime;
        document.Language = language;
        document.ViewerPreferences.DisplayDocTitle = true;
        document.Options.CompressContentStreams = true;
        foreach (var drawing in pages)
        {
            var page = document.AddPage();
            page.Width = XUnit.FromMillimeter(drawing.WidthMm);
            page.Height = XUnit.FromMillimeter(drawing.HeightMm);
            using var graphics = XGraphics.FromPdfPage(page);
            Draw(graphics, drawing.Items);
        }

        // The library closes some streams it is given; it gets one of its own.
        using var buffer = new MemoryStream();
        document.Save(buffer, closeStream: false);
        buffer.Position = 0;
        buffer.CopyTo(output);
    }

    private static void Draw(XGraphics graphics, IReadOnlyList<DrawingItem> items)
    {
        foreach (var item in items)
        {
            switch (item)
            {
                case FilledPath filled:
                    graphics.DrawPath(Brush(filled.Ink), Outline(filled.Path));
                    break;
                case StrokedPath stroked:
                    var pen = new XPen(Colour(stroked.Ink), stroked.WidthMm * PointsPerMm)
                    {
                        LineCap = XLineCap.Round,
                        LineJoin = XLineJoin.Round,
                    };
                    graphics.DrawPath(pen, Outline(stroked.Path));
                    break;
                case TextRun text:
                    graphics.DrawString(text.Text, Font(text), Brush(text.Ink), Point(text.Baseline), XStringFormats.BaseLineLeft);
                    break;
                case Group group:
                    Draw(graphics, group.Items);
                    break;
                case Clipped clipped:
                    var state = graphics.Save();
                    graphics.IntersectClip(new XRect(
                        clipped.Window.Left * PointsPerMm,
                        clipped.Window.Top * PointsPerMm,
                        clipped.Window.Width * PointsPerMm,
                        clipped.Window.Height * PointsPerMm));
                    Draw(graphics, clipped.Items);
                    graphics.Restore(state);
                    break;
                default:
                    throw new ArgumentOutOfRangeException(nameof(items), item.GetType().Name, "no such drawing item");
            }
        }
    }

    private static XFont Font(TextRun text) => new(
        LabelFont.Family,
        text.SizeMm * PointsPerMm,
        text.Face == Face.Bold ? XFontStyleEx.Bold : XFontStyleEx.Regular,
        Subset);

    private static XGraphicsPath Outline(VectorPath path)
    {
        var outline = new XGraphicsPath { FillMode = XFillMode.Alternate };
        var at = default(Position);
        foreach (var segment in path.Segments)
        {
            switch (segment.Kind)
            {
                case SegmentKind.Move:
                    outline.StartFigure();
                    break;
                case SegmentKind.Line:
                    outline.AddLine(Point(at), Point(segment.End));
                    break;
                case SegmentKind.Cubic:
                    outline.AddBezier(Point(at), Point(segment.First), Point(segment.Second), Point(segment.End));
                    break;
                default:
                    outline.CloseFigure();
                    break;
            }

            at = segment.End;
        }

        return outline;
    }

    private static XPoint Point(Position p) => new(p.X * PointsPerMm, p.Y * PointsPerMm);

    private static XSolidBrush Brush(Ink ink) => new(Colour(ink));

    private static XColor Colour(Ink ink) => ink switch
    {
        Ink.Black => XColor.FromArgb(0, 0, 0),
        Ink.White => XColor.FromArgb(255, 255, 255),
        _ => XColor.FromArgb(218, 12, 26),
    };
}
