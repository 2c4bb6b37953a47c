using System.Globalization;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Layout;

namespace Stockroom.Labels.Sheets;

/// <summary>Sets a sheet on paper.</summary>
public static class SheetRenderer
{
    private const double FootMm = 2.4;

    /// <summary>Steps by which a sheet that should be one page is made smaller.</summary>
    private const double Step = 0.96;

    private const double MostScale = 1.35;

    /// <summary>Smaller than this a sheet is no longer read at arm's length.</summary>
    private const double LeastScale = 0.68;

    /// <summary>Sets a sheet over as many pages as it takes.</summary>
    /// <param name="sheet">What it says.</param>
    /// <param name="paper">Size of the pages.</param>
    /// <param name="onePage">Make it as large as one page holds, down to what can still be read; only then take more pages.</param>
    public static IReadOnlyList<Drawing> Render(Sheet sheet, SheetPaper paper, bool onePage = false)
    {
        var scale = onePage ? MostScale : 1;
        var pages = Set(sheet, paper, scale);
        while (onePage && pages.Count > 1 && scale > LeastScale)
        {
            scale = Math.Max(LeastScale, scale * Step);
            pages = Set(sheet, paper, scale);
        }

        return [.. pages.Select((p, i) => new Drawing(paper.WidthMm, paper.HeightMm, [.. p, .. Foot(sheet, paper, i + 1, pages.Count)]))];
    }

    private static List<List<DrawingItem>> Set(Sheet sheet, SheetPaper paper, double scale)
    {
        var flow = new SheetFlow(paper, scale, paper.HeightMm - paper.MarginMm - (FootMm * 2));
        for (var i = 0; i < sheet.Blocks.Count; i++)
        {
            flow.Add(sheet.Blocks[i], i + 1 < sheet.Blocks.Count ? sheet.Blocks[i + 1] : null);
        }

        return flow.Pages;
    }

    private static IEnumerable<DrawingItem> Foot(Sheet sheet, SheetPaper paper, int page, int pages)
    {
        var baseline = paper.HeightMm - paper.MarginMm;
        var clean = new CleanText();
        var number = pages == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $"page {page} of {pages}");
        var right = LabelFont.Of(Face.Bold).WidthMm(number, FootMm);
        var words = new Paragraph(clean.Of($"{sheet.Title} · {sheet.Foot}"), Face.Regular);
        var room = paper.WidthMm - (2 * paper.MarginMm) - right - FootMm;
        var line = words.IsEmpty ? null : words.Lines(FootMm, _ => room);
        if (line is not null)
        {
            yield return new TextRun(words.Text[line[0]], Face.Regular, FootMm, new Position(paper.MarginMm, baseline));
        }

        if (number.Length > 0)
        {
            yield return new TextRun(number, Face.Bold, FootMm, new Position(paper.WidthMm - paper.MarginMm - right, baseline));
        }
    }
}
