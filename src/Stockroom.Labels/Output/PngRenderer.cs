using SkiaSharp;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Output;

/// <summary>Turns one drawing into a PNG picture. Letters are drawn from the font's own outlines, so that no machine's fonts matter.</summary>
public static class PngRenderer
{
    public const int LeastDpi = 72;

    public const int MostDpi = 1200;

    /// <summary>More pixels than these are a slip of the hand rather than a label.</summary>
    private const long MostPixels = 250_000_000;

    private const double MmPerInch = 25.4;

    /// <summary>Writes the picture, whose resolution stands in it so that it prints at its true size.</summary>
    /// <param name="drawing">A page or label.</param>
    /// <param name="dpi">Pixels to the inch, <see cref="LeastDpi"/> to <see cref="MostDpi"/>.</param>
    /// <param name="output">Left open.</param>
    /// <exception cref="LabelException">The resolution is out of range or gives too many pixels.</exception>
    public static void Write(Drawing drawing, int dpi, Stream output)
    {
        using var bitmap = Draw(drawing, dpi);
        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        PngResolution.Write(data.ToArray(), dpi, output);
    }

    /// <summary>The picture's grey values, row by row, 0 black to 255 white.</summary>
    internal static (byte[] Luminance, int Width, int Height) Grey(Drawing drawing, int dpi)
    {
        using var bitmap = Draw(drawing, dpi);
        var grey = new byte[bitmap.Width * bitmap.Height];
        var pixels = bitmap.GetPixelSpan();
        for (var i = 0; i < grey.Length; i++)
        {
            // Rec. 601 luma of red, green and blue, in that order in memory.
            grey[i] = (byte)(((299 * pixels[4 * i]) + (587 * pixels[(4 * i) + 1]) + (114 * pixels[(4 * i) + 2])) / 1000);
        }

        return (grey, bitmap.Width, bitmap.Height);
    }

    internal static SKBitmap Draw(Drawing drawing, int dpi)
    {
        if (dpi is < LeastDpi or > MostDpi)
        {
            throw new LabelException($"{dpi} dpi is outside {LeastDpi} to {MostDpi}");
        }

        var scale = dpi / MmPerInch;
        var (width, height) = ((int)Math.Round(drawing.WidthMm * scale), (int)Math.Round(drawing.HeightMm * scale));
        if ((long)width * height > MostPixels)
        {
            throw new LabelException($"{width} x {height} pixels are too many for a picture; take a lower --dpi than {dpi}");
        }

        var bitmap = new SKBitmap(Math.Max(1, width), Math.Max(1, height), SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(SKColors.White);
        canvas.Scale((float)scale);
        Draw(canvas, drawing.Items);
        return bitmap;
    }

    private static void Draw(SKCanvas canvas, IReadOnlyList<DrawingItem> items)
    {
        foreach (var item in items)
        {
            switch (item)
            {
                case FilledPath filled:
                    Fill(canvas, filled.Path, filled.Ink, SKPathFillType.EvenOdd);
                    break;
                case StrokedPath stroked:
                    using (var path = Path(stroked.Path, SKPathFillType.EvenOdd))
                    using (var pen = Paint(stroked.Ink))
                    {
                        (pen.Style, pen.StrokeWidth, pen.StrokeCap, pen.StrokeJoin) = (SKPaintStyle.Stroke, (float)stroked.WidthMm, SKStrokeCap.Round, SKStrokeJoin.Round);
                        canvas.DrawPath(path, pen);
                    }

                    break;
                case TextRun text:
                    Text(canvas, text);
                    break;
                case Group group:
                    Draw(canvas, group.Items);
                    break;
                case Clipped clipped:
                    canvas.Save();
                    canvas.ClipRect(new SKRect((float)clipped.Window.Left, (float)clipped.Window.Top, (float)clipped.Window.Right, (float)clipped.Window.Bottom));
                    Draw(canvas, clipped.Items);
                    canvas.Restore();
                    break;
                case Placed placed:
                    canvas.Save();
                    canvas.Translate((float)placed.Dx, (float)placed.Dy);
                    canvas.Scale((float)placed.Scale);
                    Draw(canvas, placed.Items);
                    canvas.Restore();
                    break;
                default:
                    throw new ArgumentOutOfRangeException(nameof(items), item.GetType().Name, "no such drawing item");
            }
        }
    }

    private static void Text(SKCanvas canvas, TextRun text)
    {
        var font = LabelFont.Of(text.Face);
        var x = text.Baseline.X;
        foreach (var rune in text.Text.EnumerateRunes())
        {
            Fill(canvas, font.Outline(rune).Transform(text.SizeMm, x, text.Baseline.Y), text.Ink, SKPathFillType.Winding);
            x += font.WidthMm(rune) * text.SizeMm;
        }
    }

    private static void Fill(SKCanvas canvas, VectorPath outline, Ink ink, SKPathFillType rule)
    {
        using var path = Path(outline, rule);
        using var paint = Paint(ink);
        canvas.DrawPath(path, paint);
    }

    private static SKPaint Paint(Ink ink) => new()
    {
        IsAntialias = true,
        Color = ink switch
        {
            Ink.Black => SKColors.Black,
            Ink.White => SKColors.White,
            _ => new SKColor(218, 12, 26),
        },
    };

    private static SKPath Path(VectorPath outline, SKPathFillType rule)
    {
        var path = new SKPath { FillType = rule };
        foreach (var segment in outline.Segments)
        {
            switch (segment.Kind)
            {
                case SegmentKind.Move:
                    path.MoveTo(Point(segment.End));
                    break;
                case SegmentKind.Line:
                    path.LineTo(Point(segment.End));
                    break;
                case SegmentKind.Cubic:
                    path.CubicTo(Point(segment.First), Point(segment.Second), Point(segment.End));
                    break;
                default:
                    path.Close();
                    break;
            }
        }

        return path;
    }

    private static SKPoint Point(Position p) => new((float)p.X, (float)p.Y);
}
