using Stockroom.Labels.Drawings;
using Stockroom.Labels.Output;
using ZXing;
using ZXing.Common;

namespace Stockroom.Labels.Tests.Codes;

/// <summary>Reads codes from drawn labels as a scanner would: from grey pixels (ZXing, which shares nothing with what wrote them).</summary>
internal static class CodeReader
{
    /// <summary>White kept around a code that is cut out of its label; the quiet zone is the label's own.</summary>
    private const double AroundMm = 1;

    /// <summary>The part of a drawing around its first code.</summary>
    public static Drawing AroundCode(IReadOnlyList<DrawingItem> items)
    {
        var area = items.OfType<Group>().First(g => g.Name == "QR").Area.Inset(-AroundMm);
        return new Drawing(area.Width, area.Height, [new Clipped(new Box(0, 0, area.Width, area.Height), items.MovedBy(-area.Left, -area.Top))]);
    }

    public static string? Read(Drawing drawing, int dpi)
    {
        var (grey, width, height) = PngRenderer.Grey(drawing, dpi);
        return Read(grey, width, height);
    }

    /// <summary>As a phone that looks more than once: with a local and a global threshold, and from farther away.</summary>
    public static string? Read(byte[] grey, int width, int height)
    {
        for (var scale = 1; scale <= 4; scale++)
        {
            var (pixels, w, h) = Shrunk(grey, width, height, scale);
            var source = new RGBLuminanceSource(pixels, w, h, RGBLuminanceSource.BitmapFormat.Gray8);
            foreach (var binarizer in new Binarizer[] { new HybridBinarizer(source), new GlobalHistogramBinarizer(source) })
            {
                var hints = new Dictionary<DecodeHintType, object> { [DecodeHintType.TRY_HARDER] = true };
                if (new ZXing.QrCode.QRCodeReader().decode(new BinaryBitmap(binarizer), hints)?.Text is { } text)
                {
                    return text;
                }
            }
        }

        return null;
    }

    private static (byte[] Pixels, int Width, int Height) Shrunk(byte[] grey, int width, int height, int by)
    {
        if (by == 1)
        {
            return (grey, width, height);
        }

        var (w, h) = (width / by, height / by);
        var to = new byte[w * h];
        for (var i = 0; i < to.Length; i++)
        {
            var sum = 0;
            for (var j = 0; j < by * by; j++)
            {
                sum += grey[((((i / w) * by) + (j / by)) * width) + ((i % w) * by) + (j % by)];
            }

            to[i] = (byte)(sum / (by * by));
        }

        return (to, w, h);
    }
}
