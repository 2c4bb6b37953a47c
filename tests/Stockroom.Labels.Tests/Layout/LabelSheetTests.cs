using Stockroom.Labels.Drawings;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Tests.Layout;

public sealed class LabelSheetTests
{
    private static readonly LabelStock Bottle = LabelStocks.Load().Named("a4-2x4");

    [Theory]
    [InlineData(0, 1, 0)]
    [InlineData(1, 1, 1)]
    [InlineData(4, 1, 4)]
    [InlineData(5, 2, 5)]
    [InlineData(7, 2, 7)]
    public void Skip_LeavesUsedLabelsEmpty(int skip, int pages, int first)
    {
        LabelText[] texts = [Samples.Gold, Samples.Ether, Samples.Unknown, Samples.NitricAcid];

        var sheet = LabelSheet.Render(texts, Bottle, skip);

        Assert.Equal(pages, sheet.Pages.Count);
        Assert.Equal(4, sheet.Pages.Sum(p => p.Items.Count));
        Assert.Equal(Bottle.LabelBox(first), ((Group)sheet.Pages[0].Items[0]).Area);
        if (pages == 2)
        {
            Assert.Equal(Bottle.LabelBox(0), ((Group)sheet.Pages[1].Items[0]).Area);
        }
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(8)]
    public void Skip_OutsideTheSheet_IsRefused(int skip)
    {
        var error = Assert.Throws<LabelException>(() => LabelSheet.Render([Samples.Gold], Bottle, skip));

        Assert.Equal($"cannot skip {skip} labels of stock 'a4-2x4', whose sheet holds 8; skip 0 to 7", error.Message);
    }

    [Fact]
    public void NoLabels_AreRefused() =>
        Assert.StartsWith("there is no label to print", Assert.Throws<LabelException>(() => LabelSheet.Render([], Bottle)).Message, StringComparison.Ordinal);

    [Fact]
    public void Labels_FollowRowByRow_AtTheStocksPitch()
    {
        Assert.Equal(new Box(4.65, 13.1, 99.1, 67.7), Bottle.LabelBox(0));
        Assert.Equal(4.65 + 101.6, Bottle.LabelBox(1).Left, 6);
        Assert.Equal(13.1 + 67.7, Bottle.LabelBox(2).Top, 6);
    }
}
