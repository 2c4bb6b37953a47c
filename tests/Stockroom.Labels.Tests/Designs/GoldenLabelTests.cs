using System.Runtime.CompilerServices;
using SkiaSharp;
using Stockroom.Labels.Designs;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Output;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Tests.Designs;

/// <summary>
/// Each design at two sizes, as it was last looked at. <c>STOCKROOM_ACCEPT_GOLDEN=1</c> accepts what is drawn now; look at the pictures before you do.
/// </summary>
public sealed class GoldenLabelTests
{
    private const int Dpi = 150;

    /// <summary>Two machines round edges of letters differently; a moved line changes far more.</summary>
    private const double Tolerance = 0.002;

    public static TheoryData<string, string, string> Labels() => new()
    {
        { "label", "a4-2x4", "NitricAcid" },
        { "label", "a4-3x8", "Ether" },
        { "card", "a4-tray-card", "Chromate" },
        { "card", "a4-door-card", "UraniumMetal" },
        { "specimen", "a4-2x4", "Gold" },
        { "specimen", "a4-tray-card", "UraniumMetal" },
        { "mark", "a4-disc-25", "NitricAcid" },
        { "mark", "a4-flag-8", "UraniumMetal" },
    };

    [Theory]
    [MemberData(nameof(Labels))]
    public void Label_OfADesign_IsAsItWasLookedAt(string design, string stock, string sample)
    {
        var fit = Fit(design, stock, sample);
        var file = Path.Combine(Folder(), $"{design}-{stock}-{sample}.png");
        using var drawn = Picture.Of(fit.Drawing, Dpi);
        PageFiles.Write(Artefacts.Path(Path.GetFileName(file)), [fit.Drawing], "Label", Samples.PrintedAt, Dpi);
        if (Environment.GetEnvironmentVariable("STOCKROOM_ACCEPT_GOLDEN") == "1")
        {
            PageFiles.Write(file, [fit.Drawing], "Label", Samples.PrintedAt, Dpi);
        }

        using var golden = SKBitmap.Decode(file);
        Assert.NotNull(golden);
        var difference = Picture.Difference(golden, drawn);
        Assert.True(difference <= Tolerance, $"{Path.GetFileName(file)}: {difference:P2} of the pixels differ; what is drawn lies in the artefacts");
    }

    [Fact]
    public void Comparison_NoticesAChangedLabel()
    {
        using var one = Picture.Of(Fit("label", "a4-2x4", "NitricAcid").Drawing, Dpi);
        using var other = Picture.Of(LabelLayout.LayOut(Samples.NitricAcid with { SignalWord = "Warning" }, LabelStocks.Load().Named("a4-2x4")).Drawing, Dpi);

        Assert.True(Picture.Difference(one, other) > Tolerance);
    }

    [Fact]
    public void EveryDesign_HasAGoldenLabelAtTwoSizes() => Assert.All(
        LabelDesigns.Default.All, d => Assert.True(Directory.GetFiles(Folder(), $"{d.Name}-*.png").Length >= 2, d.Name));

    private static LabelFit Fit(string design, string stock, string sample)
    {
        var text = sample switch
        {
            "NitricAcid" => Samples.NitricAcid,
            "Ether" => Samples.Ether,
            "Chromate" => Samples.Chromate,
            "UraniumMetal" => Samples.UraniumMetal,
            _ => Samples.Gold,
        };
        return LabelLayout.LayOut(text, LabelStocks.Load().Named(stock), design: LabelDesigns.Default.Named(design));
    }

    private static string Folder([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "..", "Golden");
}
