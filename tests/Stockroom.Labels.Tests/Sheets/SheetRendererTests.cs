using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Sheets;

namespace Stockroom.Labels.Tests.Sheets;

/// <summary>Measured on the drawn pages.</summary>
public sealed class SheetRendererTests
{
    public static TheoryData<string, int> Papers() => new() { { "a4", 3 }, { "a4", 90 }, { "letter", 40 }, { "letter", 3 } };

    [Theory]
    [MemberData(nameof(Papers))]
    public void EveryPage_KeepsItsMargins_AndNothingOverlaps(string paper, int rows)
    {
        var size = SheetPaper.All.Single(p => p.Name == paper);
        var pages = SheetRenderer.Render(Long(rows), size);

        foreach (var page in pages)
        {
            var inside = new Box(0, 0, page.WidthMm, page.HeightMm).Inset(size.MarginMm - 1);
            Assert.All(page.Items, i => Assert.True(inside.Contains(i.Bounds, 0.1), $"{i} is outside the margins"));
            var words = page.Items.OfType<TextRun>().Where(t => t.Ink == Ink.Black).ToList();
            for (var i = 0; i < words.Count; i++)
            {
                for (var j = i + 1; j < words.Count; j++)
                {
                    // The descent of a line may touch the ascent of the next: they are set at 1.2 of the type size.
                    Assert.False(words[i].Bounds.Inset(0.12 * words[i].SizeMm).Overlaps(words[j].Bounds.Inset(0.12 * words[j].SizeMm)), $"'{words[i].Text}' overlaps '{words[j].Text}'");
                }
            }
        }
    }

    [Theory]
    [InlineData(90)]
    [InlineData(3)]
    public void EveryRow_StandsOnAPage_UnderAHead(int rows)
    {
        var pages = SheetRenderer.Render(Long(rows), SheetPaper.A4);
        var words = pages.Select(p => Geometry.Words(p.Items)).ToList();

        Assert.All(Enumerable.Range(0, rows), i => Assert.Single(words, w => w.Contains($"thing {i:000} ", StringComparison.Ordinal)));
        Assert.All(words, w => Assert.Contains("What How much", w, StringComparison.Ordinal));
        Assert.Equal(pages.Count > 1, words[^1].EndsWith($"page {pages.Count} of {pages.Count}", StringComparison.Ordinal));
    }

    [Fact]
    public void OnePage_GrowsAndShrinks_BeforeItTakesASecond()
    {
        double Largest(int rows) => SheetRenderer.Render(Long(rows), SheetPaper.A4, onePage: true)[0].Items.OfType<TextRun>().Max(t => t.SizeMm);

        Assert.Single(SheetRenderer.Render(Long(3), SheetPaper.A4, onePage: true));
        Assert.Single(SheetRenderer.Render(Long(24), SheetPaper.A4, onePage: true));
        Assert.True(Largest(3) > Largest(24));
        Assert.True(SheetRenderer.Render(Long(200), SheetPaper.A4, onePage: true).Count > 1);
    }

    private static Sheet Long(int rows) => new("A sheet", "2030-05-17",
    [
        new WordsBlock("A sheet with α and H₂O", 8, Face.Bold, IsHeading: true),
        new PlateBlock("Call somebody who knows what to do, and then do what they say until they say that it is over", 5),
        new PictogramBlock([("GHS02", "5 containers"), ("GHS06", "1 container")], 13),
        new TableBlock(
            [("", 20), ("What", 40), ("How much", 20), ("Words", 60), ("", 8)],
            [
                ["A group of things"],
                .. Enumerable.Range(0, rows).Select(i => (IReadOnlyList<SheetCell>)
                [
                    new PictogramsCell(["GHS01", "GHS05", "GHS09"]), new WordsCell($"thing {i:000} of many", Face.Bold), $"{i} g",
                    "Causes severe skin burns and eye damage. May cause respiratory irritation.", new BoxCell(),
                ]),
            ],
            3),
    ]);
}
