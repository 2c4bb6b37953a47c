using Stockroom.Labels.Drawings;

namespace Stockroom.Labels.Output;

/// <summary>Writes drawings as a PDF file, whole or not at all.</summary>
public static class PdfFile
{
    /// <summary>One page for each drawing; see <see cref="PdfRenderer.Write"/>.</summary>
    /// <exception cref="LabelException">The place cannot be written.</exception>
    public static void Write(string path, IReadOnlyList<Drawing> pages, string title, DateTimeOffset createdAt) =>
        OutputFile.Write(path, stream => PdfRenderer.Write(pages, title, createdAt, stream));
}
