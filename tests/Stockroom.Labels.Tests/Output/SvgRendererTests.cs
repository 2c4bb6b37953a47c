using System.Globalization;
using System.Xml.Linq;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Output;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Tests.Output;

/// <summary>The picture as an XML reader finds it; SVG 1.1 (W3C Recommendation 16 August 2011) for the elements.</summary>
public sealed class SvgRendererTests
{
    /// <summary>Lengths are written with five decimals.</summary>
    private const double Written = 0.000006;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private static readonly XNamespace XLink = "http://www.w3.org/1999/xlink";
    private static readonly LabelStock Bottle = LabelStocks.Load().Named("a4-2x4");

    [Fact]
    public void EveryLineOfText_CanBeSelectedWhereItIsDrawn()
    {
        var page = LabelSheet.Render(Samples.All, Bottle).Pages.Single();
        var drawn = page.Items.Leaves().OfType<TextRun>().ToList();
        var written = Root(page).Descendants(Svg + "text").ToList();

        Assert.Equal(drawn.Select(t => t.Text), written.Select(t => t.Value));
        foreach (var (run, text) in drawn.Zip(written))
        {
            Assert.Equal(run.Baseline.X, Number(text, "x"), Written);
            Assert.Equal(run.Baseline.Y, Number(text, "y"), Written);
            Assert.Equal(run.SizeMm, Number(text, "font-size"), Written);
            Assert.Equal(run.WidthMm, Number(text, "textLength"), Written);
            Assert.Equal("none", text.Attribute("fill")!.Value);
        }
    }

    [Fact]
    public void EveryLetter_IsAnOutline_AndNoFontIsAskedFor()
    {
        var page = LabelSheet.Render(Samples.All, Bottle).Pages.Single();
        var root = Root(page);
        var letters = page.Items.Leaves().OfType<TextRun>().Sum(t => t.Text.EnumerateRunes().Count(r => r.Value != ' '));
        var outlines = root.Element(Svg + "defs")!.Elements(Svg + "path").Select(p => "#" + p.Attribute("id")!.Value).ToList();
        var used = root.Descendants(Svg + "g").Where(g => g.Attribute("aria-hidden") is not null)
            .Elements(Svg + "use").Select(u => u.Attribute(XLink + "href")!.Value).ToList();

        Assert.Equal(letters, used.Count);
        Assert.Equal(outlines.Distinct(), outlines);
        Assert.Empty(used.Distinct().Except(outlines));
        Assert.DoesNotContain(root.Descendants().Attributes(), a => a.Name.LocalName is "font-family" or "font");
    }

    [Fact]
    public void Pictograms_AreDrawnOnce_AndUsedWhereTheyStand()
    {
        var page = LabelSheet.Render(Samples.All, Bottle).Pages.Single();
        var root = Root(page);
        var kept = root.Element(Svg + "defs")!.Elements(Svg + "g").Select(g => g.Attribute("id")!.Value).ToList();
        var used = root.Descendants(Svg + "use").Select(u => u.Attribute(XLink + "href")!.Value[1..]).Where(u => u.StartsWith("GHS", StringComparison.Ordinal)).ToList();

        Assert.Equal(kept.Distinct(), kept);
        Assert.Equal(Samples.All.SelectMany(t => t.Pictograms), used);
        Assert.Equal(kept.Order(StringComparer.Ordinal), used.Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Page_IsInMillimetres_WithTitleAndLanguage()
    {
        var root = Root(LabelSheet.Render([Samples.Gold], Bottle).Pages[0]);

        Assert.Equal("210mm", root.Attribute("width")!.Value);
        Assert.Equal("0 0 210 297", root.Attribute("viewBox")!.Value);
        Assert.Equal("en", root.Attribute(XNamespace.Xml + "lang")!.Value);
        Assert.Equal("Labels <1>", root.Element(Svg + "title")!.Value);
    }

    [Fact]
    public void Paths_AreWrittenStepByStep_AndClippingsNested()
    {
        var path = new PathBuilder().Move(0, 0).Line(2.5, 0).Cubic(1, 2, 3, 4, 5, 6).Close().Build();
        var inner = new Clipped(new Box(1, 1, 2, 2), [new StrokedPath(path, Ink.Red, 0.5)]);
        var root = Root(new Drawing(10, 10, [new FilledPath(path, Ink.Black), new Clipped(new Box(0, 0, 5, 5), [inner])]));
        var windows = root.Descendants(Svg + "clipPath").Select(c => c.Attribute("id")!.Value).ToList();

        Assert.Equal("M0 0L2.5 0C1 2 3 4 5 6Z", root.Elements(Svg + "path").Single().Attribute("d")!.Value);
        Assert.Equal(2, windows.Distinct().Count());
        Assert.Equal(windows.Select(w => $"url(#{w})"), root.Descendants(Svg + "g").Attributes("clip-path").Select(a => a.Value));
    }

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    private static XElement Root(Drawing drawing)
    {
        using var stream = new MemoryStream();
        SvgRenderer.Write(drawing, "Labels <1>", stream);
        stream.Position = 0;
        return XDocument.Load(stream).Root!;
    }
}
