using Stockroom.Labels.Layout;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Tests.Codes;

/// <summary>Every stock's codes as printers of usual resolutions draw them: the text read is exactly the id and words that it should be.</summary>
public sealed class DrawnCodeTests
{
    public static TheoryData<string> StockNames() => [.. LabelStocks.Load().All.Where(s => s.Frames.Count == 0).Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(StockNames))]
    public void Code_At203And300And600Dpi_ReadsExactly(string name)
    {
        var stock = LabelStocks.Load().Named(name);
        var codes = 0;
        foreach (var text in Samples.All)
        {
            var fit = LabelLayout.LayOut(text, stock);
            if (fit.Code is null)
            {
                continue;
            }

            codes++;
            Assert.StartsWith($"STOCKROOM:{text.Id ?? "SAMPLE"}", fit.Code.Text, StringComparison.Ordinal);
            foreach (var dpi in new[] { 203, 300, 600 })
            {
                Assert.Equal($"{dpi} dpi {fit.Code.Text}", $"{dpi} dpi {CodeReader.Read(CodeReader.AroundCode(fit.Drawing.Items), dpi)}");
            }
        }

        // Of the smallest flags and discs some carry no code, and say so.
        Assert.True(codes > 0 || stock.PrintWidthMm * stock.PrintHeightMm < 400, $"no code on {name}");
    }
}
