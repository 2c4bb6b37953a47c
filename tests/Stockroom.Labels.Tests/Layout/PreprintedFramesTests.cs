using Stockroom.Labels.Drawings;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Output;
using Stockroom.Labels.Rules;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Tests.Layout;

/// <summary>Stock that comes with red frames: each is filled, and the text passes them.</summary>
public sealed class PreprintedFramesTests
{
    private static readonly LabelStocks Stocks = LabelStocks.Load();

    public static TheoryData<string> Framed() => [.. Stocks.All.Where(s => s.Frames.Count > 0).Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(Framed))]
    public void SymbolsAlone_StandInTheFrames_AndNothingOverThem(string name)
    {
        var stock = Stocks.Named(name);
        foreach (var sample in Samples.All.Where(s => s.HazardStatements.Count > 0))
        {
            var text = sample with { Pictograms = [.. Stockroom.Labels.Pictograms.Pictogram.Codes.Skip(3).Take(stock.Frames.Count)] };
            var fit = LabelLayout.LayOut(text, stock);
            var drawn = Geometry.PictogramsOf(fit.Drawing.Items).ToList();

            Assert.Equal(stock.Frames.Select(f => f.Box), drawn.Select(g => g.Area));
            Assert.Equal(text.Pictograms, drawn.Select(g => g.Name[..5]));
            Assert.DoesNotContain(fit.Drawing.Items.Leaves().OfType<FilledPath>(), f => f.Ink == Ink.Red);
            Assert.Equal([], Geometry.Faults(new Box(0, 0, stock.PrintWidthMm, stock.PrintHeightMm), fit.Drawing.Items));
            PageFiles.Write(Artefacts.Path($"frames-{name}.pdf"), LabelSheet.Render([text], stock).Pages, "Frames", Samples.PrintedAt);
        }
    }

    [Fact]
    public void EmptyFrame_IsRefused_AndMatchingStockNamed()
    {
        var one = Samples.NitricAcid with { Pictograms = ["GHS05"] };
        var error = Assert.Throws<LabelException>(() => LabelLayout.LayOut(one, Stocks.Named("a4-2x4-2-frames"), Stocks.All));

        Assert.Equal("K7F2-9T needs 1 pictogram and stock 'a4-2x4-2-frames' comes with 2 red frames; no frame may stay empty; take a4-2x4-1-frame", error.Message);
    }

    [Fact]
    public void MorePictogramsThanFrames_AreRefused() => Assert.Contains(
        "all pictograms need a frame", Assert.Throws<LabelException>(() => LabelLayout.LayOut(Samples.NitricAcid, Stocks.Named("a4-2x4-1-frame"))).Message);

    [Fact]
    public void NoHazard_OnFramedStock_IsRefused() => Assert.EndsWith(
        "take a stock without frames", Assert.Throws<LabelException>(() => LabelLayout.LayOut(Samples.Gold, Stocks.Named("a4-2x4-1-frame"), Stocks.All)).Message, StringComparison.Ordinal);

    [Fact]
    public void SpareFrame_WhereTheEditionAllowsIt_IsFilledWithSolidBlack()
    {
        // 29 CFR 1910.1200 Appendix C.2.3.1 (from memory): no square may stand empty; an unused one is blacked out.
        var text = Samples.NitricAcid with { Pictograms = ["GHS05"], Demands = DemandsOf.For(Stockroom.Chemistry.Hazards.RuleSet.Us, 500) };
        var stock = Stocks.Named("a4-2x4-2-frames");
        var spare = Assert.Single(LabelLayout.LayOut(text, stock).Drawing.Items.OfType<Group>(), g => g.Name == "spare frame");

        Assert.True(spare.Area.Contains(stock.Frames[1].Box));
        Assert.Equal(Ink.Black, Assert.IsType<FilledPath>(Assert.Single(spare.Items)).Ink);
    }
}
