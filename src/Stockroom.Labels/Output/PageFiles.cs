using System.Globalization;
using Stockroom.Labels.Drawings;

namespace Stockroom.Labels.Output;

/// <summary>Writes pages as a file of the kind its name asks for: one PDF, or an SVG or PNG a page. Whole or not at all.</summary>
public static class PageFiles
{
    /// <summary>Dots to the inch of a PNG where none are asked for: those of a usual label printer.</summary>
    public const int UsualDpi = 300;

    private static readonly string[] Kinds = [".pdf", ".svg", ".png"];

    /// <summary>True where the name ends in a kind that can be written.</summary>
    public static bool CanWrite(string path) => Kinds.Contains(KindOf(path));

    public static bool IsPng(string path) => KindOf(path) == ".png";

    /// <summary>Writes the pages and gives the names of the files: the one asked for, or with several pages of SVG or PNG "labels-1.svg", "labels-2.svg" ...</summary>
    /// <param name="path">Ends in .pdf, .svg or .png.</param>
    /// <param name="pages">At least one.</param>
    /// <param name="title">Kept in the file.</param>
    /// <param name="createdAt">Kept in a PDF.</param>
    /// <param name="dpi">Of a PNG.</param>
    /// <exception cref="LabelException">Another kind of file, or the place cannot be written.</exception>
    public static IReadOnlyList<string> Write(string path, IReadOnlyList<Drawing> pages, string title, DateTimeOffset createdAt, int dpi = UsualDpi)
    {
        if (!CanWrite(path))
        {
            throw new LabelException($"'{path}' is not a kind of file that can be written; its name ends in {string.Join(", ", Kinds)}");
        }

        if (KindOf(path) == ".pdf")
        {
            OutputFile.Write(path, stream => PdfRenderer.Write(pages, title, createdAt, stream));
            return [path];
        }

        var names = pages.Count == 1 ? [path] : Enumerable.Range(1, pages.Count).Select(i => Numbered(path, i)).ToList();
        OutputFile.WriteAll([.. names.Zip(pages, (name, page) => (name, (Action<Stream>)(s => Picture(name, page, title, dpi, s))))]);
        return names;
    }

    private static void Picture(string name, Drawing page, string title, int dpi, Stream output)
    {
        if (IsPng(name))
        {
            PngRenderer.Write(page, dpi, output);
        }
        else
        {
            SvgRenderer.Write(page, title, output);
        }
    }

    private static string Numbered(string path, int number) => Path.Combine(
        Path.GetDirectoryName(path) ?? string.Empty,
        string.Create(CultureInfo.InvariantCulture, $"{Path.GetFileNameWithoutExtension(path)}-{number}{Path.GetExtension(path)}"));

    private static string KindOf(string path) => Path.GetExtension(path).ToLowerInvariant();
}
