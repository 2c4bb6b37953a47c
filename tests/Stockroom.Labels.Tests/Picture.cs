using SkiaSharp;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Output;

namespace Stockroom.Labels.Tests;

/// <summary>Pictures compared pixel by pixel, with a tolerance for how another machine rounds.</summary>
internal static class Picture
{
    /// <summary>A pixel counts as different from this step of grey on.</summary>
    private const int Step = 48;

    public static SKBitmap Of(Drawing drawing, int dpi)
    {
        using var stream = new MemoryStream();
        PngRenderer.Write(drawing, dpi, stream);
        return SKBitmap.Decode(stream.ToArray());
    }

    /// <summary>Share of pixels that differ; 1 where the sizes do.</summary>
    public static double Difference(SKBitmap a, SKBitmap b)
    {
        if (a.Width != b.Width || a.Height != b.Height)
        {
            return 1;
        }

        var different = 0;
        for (var y = 0; y < a.Height; y++)
        {
            for (var x = 0; x < a.Width; x++)
            {
                var (p, q) = (a.GetPixel(x, y), b.GetPixel(x, y));
                different += Math.Abs(p.Red - q.Red) >= Step || Math.Abs(p.Green - q.Green) >= Step || Math.Abs(p.Blue - q.Blue) >= Step ? 1 : 0;
            }
        }

        return different / (double)(a.Width * a.Height);
    }
}
