using Stockroom.Labels.Codes;
using ZXing;
using ZXing.QrCode;

namespace Stockroom.Labels.Tests.Codes;

/// <summary>Draws a module matrix as grey pixels, quiet zone included, and reads it with an independent reader.</summary>
internal static class QrRaster
{
    public static string? Read(QrSymbol symbol, int pixelsPerModule = 3)
    {
        var edge = (symbol.Count + (2 * QrSymbol.QuietModules)) * pixelsPerModule;
        var pixels = new byte[edge * edge];
        Array.Fill(pixels, (byte)255);
        for (var y = 0; y < symbol.Count * pixelsPerModule; y++)
        {
            for (var x = 0; x < symbol.Count * pixelsPerModule; x++)
            {
                if (symbol.Modules[y / pixelsPerModule, x / pixelsPerModule])
                {
                    var quiet = QrSymbol.QuietModules * pixelsPerModule;
                    pixels[((y + quiet) * edge) + x + quiet] = 0;
                }
            }
        }

        var source = new RGBLuminanceSource(pixels, edge, edge, RGBLuminanceSource.BitmapFormat.Gray8);
        return new QRCodeReader().decode(new BinaryBitmap(new ZXing.Common.HybridBinarizer(source)))?.Text;
    }
}
