using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Stockroom.Labels.Drawings;

namespace Stockroom.Labels.Output;

/// <summary>Turns drawings into a PDF: vector paths, selectable text in an embedded subset of the label font.</summary>
public static class PdfRenderer
{
    /// <summary>72 points to the inch, 25.4 mm to the inch.</summary>
    private const double PointsPerMm = 72.0 / 25.4;

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
        var canvas = new PdfCanvas(document);
        foreach (var drawing in pages)
        {
            var page = document.AddPage();
            page.Width = XUnit.FromMillimeter(drawing.WidthMm);
            page.Height = XUnit.FromMillimeter(drawing.HeightMm);
            using var graphics = XGraphics.FromPdfPage(page);
            canvas.Draw(graphics, drawing.Items, PointsPerMm);
        }

        // The library closes some streams it is given; it gets one of its own.
        using var buffer = new MemoryStream();
        document.Save(buffer, closeStream: false);
        buffer.Position = 0;
        buffer.CopyTo(output);
    }
}
