using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Tests.Stocks;

public sealed class LabelStocksTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("stocks").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void ProgramsOwnStocks_IncludeTheBottleSheet()
    {
        var stock = LabelStocks.Load().Named("a4-2x4");

        Assert.Equal(8, stock.PerSheet);
        Assert.Equal(99.1, stock.LabelWidthMm);
        Assert.Equal(67.7, stock.LabelHeightMm);
    }

    [Fact]
    public void UnknownStock_IsRefusedWithTheNamesThereAre()
    {
        var error = Assert.Throws<LabelException>(() => LabelStocks.Load().Named("letter"));

        Assert.StartsWith("there is no label stock 'letter'; the stocks are a4-1x2, a4-2x2, ", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void KeepersOwnStock_IsAddedByAddingAFile()
    {
        Write("tray-card", 80);

        var stocks = LabelStocks.Load(_folder);

        Assert.Equal(80, stocks.Named("tray-card").LabelWidthMm);
        Assert.Equal(LabelStocks.Load().All.Count + 1, stocks.All.Count);
    }

    [Fact]
    public void KeepersOwnStock_OfTheSameName_Replaces()
    {
        Write("a4-2x4", 90);

        Assert.Equal(90, LabelStocks.Load(_folder).Named("a4-2x4").LabelWidthMm);
    }

    [Fact]
    public void BadFileOfTheKeeper_IsNamedInTheError()
    {
        var path = Path.Combine(_folder, "odd.json");
        File.WriteAllText(path, "{}");

        Assert.Equal($"{path}: member 'name': missing", Assert.Throws<LabelException>(() => LabelStocks.Load(_folder)).Message);
    }

    [Fact]
    public void MissingFolder_IsOneClearLine()
    {
        var error = Assert.Throws<LabelException>(() => LabelStocks.Load(Path.Combine(_folder, "missing")));

        Assert.StartsWith("cannot read the files in '", error.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', error.Message);
    }

    private void Write(string name, double width) => File.WriteAllText(Path.Combine(_folder, name + ".json"), $$"""
        {
          "name": "{{name}}", "description": "own", "page_width_mm": 100, "page_height_mm": 100, "columns": 1, "rows": 1,
          "label_width_mm": {{width}}, "label_height_mm": 60, "left_mm": 5, "top_mm": 5, "pitch_x_mm": 90, "pitch_y_mm": 60,
          "corner_mm": 0, "padding_mm": 2, "medium": "sheet", "shape": "rectangle", "diameter_mm": null
        }
        """);
}
