using Stockroom.Labels.Layout;
using Stockroom.Labels.Output;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Tests.Layout;

public sealed class PagesToLookAtTests
{
    public static TheoryData<string> Stocks() => [.. LabelStocks.Load().All.Where(s => s.Frames.Count == 0).Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(Stocks))]
    public void Page_OfEveryStock_IsWritten(string name)
    {
        var stocks = LabelStocks.Load();
        var pages = LabelSheet.Render(Samples.All, stocks.Named(name));
        var path = Artefacts.Path($"labels-{name}.pdf");

        PageFiles.Write(path, pages.Pages, $"Labels on {name}", Samples.PrintedAt);

        Assert.Equal(pages.Pages.Count, (Samples.All.Count + stocks.Named(name).PerSheet - 1) / stocks.Named(name).PerSheet);
        Assert.True(new FileInfo(path).Length > 4_000);
    }
}
