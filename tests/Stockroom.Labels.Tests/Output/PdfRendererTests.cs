using System.Text;
using System.Text.RegularExpressions;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Output;
using Stockroom.Labels.Stocks;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace Stockroom.Labels.Tests.Output;

/// <summary>What another program finds in the written PDF (read with PdfPig).</summary>
public sealed partial class PdfRendererTests
{
    private const double PointsPerMm = 72 / 25.4;
    private static readonly LabelStock Bottle = LabelStocks.Load().Named("a4-2x4");

    [Fact]
    public void PdfText_OfALabel_ContainsExactlyItsStatements()
    {
        foreach (var text in Samples.All)
        {
            using var pdf = PdfDocument.Open(Bytes(LabelSheet.Render([text], Bottle).Pages));
            var read = Geometry.Solid(string.Concat(pdf.GetPage(1).Letters.Select(l => l.Value)));

            var others = Samples.All.SelectMany(t => t.HazardStatements.Concat(t.PrecautionaryStatements)).Distinct().ToList();
            var own = text.HazardStatements.Concat(text.PrecautionaryStatements).ToList();
            Assert.All(own, s => Assert.Contains(Geometry.Solid(s.Text), read));
            Assert.All(others.Except(own), s => Assert.DoesNotContain(Geometry.Solid(s.Text), read));
            Assert.Contains(Geometry.Solid(text.Title), read);
            Assert.Contains(text.Id ?? "SAMPLE", read);
        }
    }

    [Fact]
    public void PdfLetters_OfEveryLabel_LieInsideTheirLabel()
    {
        foreach (var stock in LabelStocks.Load().All.Where(s => s.Frames.Count == 0))
        {
            var sheet = LabelSheet.Render(Samples.All, stock);
            using var pdf = PdfDocument.Open(Bytes(sheet.Pages));
            var boxes = Enumerable.Range(0, stock.PerSheet).Select(stock.LabelBox).ToList();
            foreach (var page in pdf.GetPages())
            {
                foreach (var letter in page.Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)))
                {
                    var r = letter.BoundingBox;
                    var box = Box.FromEdges(
                        r.Left / PointsPerMm, (page.Height - r.Top) / PointsPerMm, r.Right / PointsPerMm, (page.Height - r.Bottom) / PointsPerMm);
                    Assert.True(boxes.Any(b => b.Contains(box, 0.05)), $"{stock.Name}: '{letter.Value}' at {box} is on no label");
                }
            }
        }
    }

    [Theory]
    [InlineData("Danger", Face.Bold)]
    [InlineData("Wear protective gloves", Face.Regular)]
    [InlineData("CuSO₄·5H₂O ≥ 98 % αβ", Face.Regular)]
    public void TextWidth_IsTheWidthInThePdf(string text, Face face)
    {
        var run = new TextRun(text, face, 5, new Position(10, 20));
        using var pdf = PdfDocument.Open(Bytes([new Drawing(150, 40, [run])]));
        var letters = pdf.GetPage(1).Letters;

        Assert.Equal(text, string.Concat(letters.Select(l => l.Value)));
        Assert.Equal(10 * PointsPerMm, letters[0].StartBaseLine.X, 2);

        // A PDF states each width in whole thousandths of the type size.
        Assert.Equal(10 + run.WidthMm, letters[^1].EndBaseLine.X / PointsPerMm, 0.0005 * 5 * (text.Length + 10));
        Assert.Equal((40 - 20) * PointsPerMm, letters[0].StartBaseLine.Y, 2);
    }

    // What ends a string, a text object or a stream of a PDF (ISO 32000-1, 7.3.4) is only drawn.
    [Fact]
    public void PdfText_HoldingThePdfsOwnSigns_IsDrawnAsItStands()
    {
        const string Hostile = "a) Tj ET endstream endobj <</S /JavaScript /JS (app.alert(1))>> \\) %% xref";
        var text = Samples.Gold with { Title = Hostile, Details = [new Detail("Place", Hostile + "\u001B[2J\u202E")] };
        using var pdf = PdfDocument.Open(Bytes(LabelSheet.Render([text], LabelStocks.Load().Named("a4-1x2")).Pages));
        var read = Geometry.Solid(string.Concat(pdf.GetPage(1).Letters.Select(l => l.Value)));
        Assert.Contains(Geometry.Solid(Hostile), read, StringComparison.Ordinal);
        Assert.DoesNotContain(read, char.IsControl);
        Assert.DoesNotContain('\u202E', read);
        Assert.Equal(1, pdf.NumberOfPages);
    }

    [Fact]
    public void Document_HasTitleLanguageAndPageSize()
    {
        using var pdf = PdfDocument.Open(Bytes(LabelSheet.Render([Samples.Gold], Bottle).Pages));

        Assert.Equal("Labels", pdf.Information.Title);
        var catalog = pdf.Structure.Catalog.CatalogDictionary;
        Assert.True(catalog.TryGet(NameToken.Create("Lang"), out var language));
        Assert.Equal("en", Assert.IsType<StringToken>(language, exactMatch: false).Data);
        Assert.Equal(210 * PointsPerMm, pdf.GetPage(1).Width, 1);
        Assert.Equal(297 * PointsPerMm, pdf.GetPage(1).Height, 1);
    }

    [Fact]
    public void Font_IsEmbeddedAsASubset()
    {
        var bytes = Bytes(LabelSheet.Render(Samples.All, Bottle).Pages);
        var raw = Encoding.Latin1.GetString(bytes);

        var names = FontName().Matches(raw).Select(m => m.Groups[1].Value).Distinct().ToList();
        Assert.NotEmpty(names);
        Assert.All(names, n => Assert.Matches("^[A-Z]{6}\\+", n));
        Assert.Contains("/FontFile2", raw);
        Assert.True(bytes.Length < 250_000, $"{bytes.Length} bytes for one sheet: the whole font must not be in it");
    }

    [Fact]
    public void ThousandMixedLabels_TakeLessThanThreeMegabytes_WithEachPictogramOnce()
    {
        var texts = Enumerable.Range(0, 1000)
            .Select(i => Samples.All[i % Samples.All.Count] with { Id = $"K{i:0000}-9T" }).ToList();
        var bytes = Bytes(LabelSheet.Render(texts, Bottle).Pages);

        Assert.True(bytes.Length < 3_000_000, $"{bytes.Length} bytes");
        var forms = Encoding.Latin1.GetString(bytes).Split("/Subtype/Form").Length - 1;
        Assert.Equal(Samples.All.SelectMany(t => t.Pictograms).Distinct().Count(), forms);
    }

    [Fact]
    public void Clipping_EndsWithItsItems()
    {
        var square = new FilledPath(new PathBuilder().Rectangle(new Box(0, 0, 20, 20)).Build(), Ink.Black);
        var line = new StrokedPath(new PathBuilder().Move(0, 30).Line(40, 30).Build(), Ink.Red, 2);
        using var pdf = PdfDocument.Open(Bytes([new Drawing(50, 50, [new Clipped(new Box(5, 5, 10, 10), [square]), line])]));
        var operators = pdf.GetPage(1).Operations.Select(o => o.Operator).ToList();

        var clip = operators.FindIndex(o => o is "W" or "W*");
        var restore = operators.FindIndex(clip, o => o == "Q");
        Assert.InRange(operators.FindIndex(o => o is "f" or "f*"), clip, restore);
        Assert.True(operators.FindIndex(o => o == "S") > restore);
        Assert.Contains("w", operators);
    }

    [Fact]
    public void NoPages_AreRefused() => Assert.Throws<ArgumentException>(() => Bytes([]));

    [Fact]
    public void ManyDocumentsAtOnce_AreWritten()
    {
        var pages = LabelSheet.Render([Samples.Gold], Bottle).Pages;

        Parallel.For(0, 16, _ =>
        {
            using var pdf = PdfDocument.Open(Bytes(pages));
            Assert.Equal(1, pdf.NumberOfPages);
        });
    }

    private static byte[] Bytes(IReadOnlyList<Drawing> pages)
    {
        using var stream = new MemoryStream();
        PdfRenderer.Write(pages, "Labels", Samples.PrintedAt, stream);
        return stream.ToArray();
    }

    [GeneratedRegex(@"/FontName\s*/(\S+)")]
    private static partial Regex FontName();
}
