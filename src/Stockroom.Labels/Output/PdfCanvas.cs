using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Output;

/// <summary>Draws items into one PDF document; fonts and shapes that recur are kept once.</summary>
internal sealed class PdfCanvas(PdfDocument document)
{
    /// <summary>Edge of the box that a recurring shape is drawn in, in its own units.</summary>
    private const double FormEdge = 100;

    private static readonly XPdfFontOptions Subset = new(PdfFontEncoding.Unicode, PdfFontEmbedding.TryComputeSubset);

    private readonly Dictionary<string, XForm> _forms = new(StringComparer.Ordinal);
    private readonly Dictionary<(Face, double), XFont> _fonts = [];
    private readonly Dictionary<Ink, XSolidBrush> _brushes = [];

    /// <summary>Draws items in their order.</summary>
    /// <param name="graphics">Page or form, in points.</param>
    /// <param name="items">In their own units.</param>
    /// <param name="unit">Points to one of those units.</param>
    public void Draw(XGraphics graphics, IReadOnlyList<DrawingItem> items, double unit)
    {
        foreach (var item in items)
        {
            switch (item)
            {
                case FilledPath filled:
                    graphics.DrawPath(Brush(filled.Ink), Outline(filled.Path, unit));
                    break;
                case StrokedPath stroked:
                    var pen = new XPen(Colour(stroked.Ink), stroked.WidthMm * unit)
                    {
                        LineCap = XLineCap.Round,
                        LineJoin = XLineJoin.Round,
                    };
                    graphics.DrawPath(pen, Outline(stroked.Path, unit));
                    break;
                case TextRun text:
                    graphics.DrawString(
                        text.Text, Font(text.Face, text.SizeMm * unit), Brush(text.Ink), Point(text.Baseline, unit), XStringFormats.BaseLineLeft);
                    break;
                case Group group:
                    Draw(graphics, group.Items, unit);
                    break;
                case Clipped clipped:
                    var window = clipped.Window.Scaled(unit);
                    var state = graphics.Save();
                    graphics.IntersectClip(new XRect(window.Left, window.Top, window.Width, window.Height));
                    Draw(graphics, clipped.Items, unit);
                    graphics.Restore(state);
                    break;
                case Placed { Name: { } name } placed:
                    var edge = FormEdge * placed.Scale * unit;
                    graphics.DrawImage(Form(name, placed.Items), placed.Dx * unit, placed.Dy * unit, edge, edge);
                    break;
                case Placed placed:
                    // The items keep their own short numbers; the transformation carries the size.
                    var before = graphics.Save();
                    graphics.TranslateTransform(placed.Dx * unit, placed.Dy * unit);
                    graphics.ScaleTransform(placed.Scale * unit);
                    Draw(graphics, placed.Items, 1);
                    graphics.Restore(before);
                    break;
                default:
                    throw new ArgumentOutOfRangeException(nameof(items), item.GetType().Name, "no such drawing item");
            }
        }
    }

    private XForm Form(string name, IReadOnlyList<DrawingItem> items)
    {
        if (!_forms.TryGetValue(name, out var form))
        {
            _forms[name] = form = new XForm(document, new XSize(FormEdge, FormEdge));
            using var graphics = XGraphics.FromForm(form);
            Draw(graphics, items, 1);
        }

        return form;
    }

    private XFont Font(Face face, double sizePoints)
    {
        if (!_fonts.TryGetValue((face, sizePoints), out var font))
        {
            var style = face == Face.Bold ? XFontStyleEx.Bold : XFontStyleEx.Regular;
            _fonts[(face, sizePoints)] = font = new XFont(LabelFont.Family, sizePoints, style, Subset);
        }

        return font;
    }

    private XSolidBrush Brush(Ink ink)
    {
        if (!_brushes.TryGetValue(ink, out var brush))
        {
            _brushes[ink] = brush = new XSolidBrush(Colour(ink));
        }

        return brush;
    }

    private static XGraphicsPath Outline(VectorPath path, double unit)
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
                    outline.AddLine(Point(at, unit), Point(segment.End, unit));
                    break;
                case SegmentKind.Cubic:
                    outline.AddBezier(Point(at, unit), Point(segment.First, unit), Point(segment.Second, unit), Point(segment.End, unit));
                    break;
                default:
                    outline.CloseFigure();
                    break;
            }

            at = segment.End;
        }

        return outline;
    }

    private static XPoint Point(Position p, double unit) => new(p.X * unit, p.Y * unit);

    private static XColor Colour(Ink ink) => ink switch
    {
        Ink.Black => XColor.FromArgb(0, 0, 0),
        Ink.White => XColor.FromArgb(255, 255, 255),
        _ => XColor.FromArgb(218, 12, 26),
    };
}
