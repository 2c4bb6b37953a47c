using Stockroom.Labels.Drawings;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Tests.Layout;

public sealed class CalibrationPageTests
{
    public static TheoryData<string> StockNames() => [.. LabelStocks.Load().All.Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(StockNames))]
    public void Page_OutlinesEveryLabelWhereItIsPrinted(string name)
    {
        var stock = LabelStocks.Load().Named(name);
        var page = CalibrationPage.Of(stock);
        var outlines = page.Items.OfType<StrokedPath>().Select(s => s.Path.Bounds).ToList();

        Assert.All(Enumerable.Range(0, stock.PerSheet).Select(stock.LabelBox), b => Assert.Contains(outlines, o =>
            Math.Abs(o.Left - b.Left) + Math.Abs(o.Top - b.Top) + Math.Abs(o.Right - b.Right) + Math.Abs(o.Bottom - b.Bottom) < 0.001));
        Assert.All(page.Items.OfType<TextRun>(), t => Assert.True(stock.LabelBox(0).Contains(t.Bounds), t.Text));
    }

    [Fact]
    public void Shift_MovesEveryLabelByAsMuch_AndNoFartherThanAPrinterIsOff()
    {
        var stock = LabelStocks.Load().Named("a4-2x4");
        var plain = (Group)LabelSheet.Render([Samples.Gold], stock).Pages[0].Items[0];
        var moved = (Group)LabelSheet.Render([Samples.Gold], stock, shift: new Position(1.5, -2)).Pages[0].Items[0];

        Assert.Equal(plain.Area.Offset(1.5, -2), moved.Area);
        Assert.Equal(plain.Items[^1].Bounds.Left + 1.5, moved.Items[^1].Bounds.Left, 9);
        Assert.Equal(
            "cannot shift the print by 11 mm; at most 10 mm",
            Assert.Throws<LabelException>(() => LabelSheet.Render([Samples.Gold], stock, shift: new Position(0, 11))).Message);
    }
}
