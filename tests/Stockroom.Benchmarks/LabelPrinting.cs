using BenchmarkDotNet.Attributes;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Output;
using Stockroom.Labels.Stocks;

namespace Stockroom.Benchmarks;

/// <summary>A thousand mixed labels to one PDF: less than 2 s and 3 MB.</summary>
[MemoryDiagnoser]
public class LabelPrinting
{
    private static readonly DateTimeOffset PrintedAt = new(2030, 5, 17, 9, 30, 0, TimeSpan.Zero);

    private readonly LabelStocks _stocks = LabelStocks.Load();
    private readonly List<LabelText> _texts = [.. Enumerable.Range(0, 1000).Select(Text)];

    [Params("a4-2x4", "a4-3x8", "a4-4x12")]
    public string Stock { get; set; } = "";

    /// <summary>Bytes of the document.</summary>
    [Benchmark]
    public long ThousandLabels()
    {
        var pages = LabelSheet.Render(_texts, _stocks.Named(Stock), 0, _stocks.All);
        using var stream = new MemoryStream();
        PdfRenderer.Write(pages.Pages, "Labels", PrintedAt, stream);
        return stream.Length;
    }

    /// <summary>Every third has five statements of each kind, every third two, the rest none.</summary>
    private static LabelText Text(int number)
    {
        var statements = (2 - (number % 3)) switch { 2 => 5, 1 => 2, _ => 0 };
        return new LabelText
        {
            Id = $"K{number:0000}-9T",
            Title = $"Reagent {number}",
            TitleNote = "HNO3",
            SignalWord = statements > 0 ? "Danger" : null,
            Pictograms = statements == 0 ? [] : ["GHS05", "GHS06", "GHS09"],
            HazardStatements = [.. Enumerable.Range(1, statements).Select(i => new Statement($"H{i}", "Causes severe skin burns and eye damage"))],
            PrecautionaryStatements =
                [.. Enumerable.Range(1, statements).Select(i => new Statement($"P{i}", "Wear protective gloves, protective clothing and eye protection."))],
            Details = [new Detail("Amount", $"{number} g"), new Detail("Place", "Hall, case 2, shelf 4")],
            Footnotes = ["CLP, as of ATP21"],
        };
    }
}
