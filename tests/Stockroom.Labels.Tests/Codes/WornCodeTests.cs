using Stockroom.Labels.Codes;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Output;

namespace Stockroom.Labels.Tests.Codes;

/// <summary>
/// Codes that are blurred by half a module, covered over 8 % of their area, or wrapped round a vial of 10 mm. STOCKROOM_WORN_CODES=N asks
/// for N tries of each; a few are made always.
/// </summary>
public sealed class WornCodeTests
{
    private const int Dpi = 600;
    private const double PixelsPerMm = Dpi / 25.4;
    private const double VialMm = 10;

    private static readonly int Tries = int.TryParse(Environment.GetEnvironmentVariable("STOCKROOM_WORN_CODES"), out var tries) ? tries : 6;

    private static readonly IReadOnlyList<string> Words = QrText.Words("Nitric acid 65 %", [], "Danger", "Causes severe skin burns and eye damage");

    /// <summary>The first is the tiniest code there is.</summary>
    public static TheoryData<double> Edges => [11, 12.5, 15.5, 17, 22, 32];

    [Theory]
    [MemberData(nameof(Edges))]
    public void Blurred_ByHalfAModule_ReadsExactly(double edgeMm)
    {
        var (symbol, wear) = Code(edgeMm);
        var module = symbol.ModuleMm * PixelsPerMm;

        // A point spreads over half a module to each side: two standard deviations.
        Assert.Equal(symbol.Text, Read(wear.Blurred(module / 4)));

        // Twice that is more than is asked; it reads or it does not, but never wrongly.
        var text = Read(wear.Blurred(module / 2));
        Assert.True(text is null || text == symbol.Text, $"read '{text}'");
        File.AppendAllText(Artefacts.Path("worn-codes.txt"), FormattableString.Invariant($"edge {edgeMm} mm, blurred with a standard deviation of half a module: {(text is null ? "not read" : "read")}\n"));
    }

    [Theory]
    [MemberData(nameof(Edges))]
    public void Wrapped_RoundAVialThatItFits_ReadsExactly(double edgeMm)
    {
        var (symbol, wear) = Code(edgeMm);

        // As on a wrap label: the modules take at most 0.9 of the diameter, those of larger symbols 0.65.
        var diameter = Math.Max(VialMm, symbol.Count * symbol.ModuleMm / (symbol.Count == 21 ? 0.9 : 0.65));

        Assert.Equal(symbol.Text, Read(wear.Wrapped(diameter * PixelsPerMm)));
        Assert.True(symbol.Count > 21 || diameter <= VialMm, "the smallest codes go round 10 mm");
    }

    [Theory]
    [MemberData(nameof(Edges))]
    public void StainedOver8Percent_ReadsExactly_AtTheRateSaid(double edgeMm)
    {
        var (symbol, wear) = Code(edgeMm);
        var random = new Random(20300517);
        var left = QrSymbol.QuietModules * symbol.ModuleMm * PixelsPerMm;
        var edge = symbol.Count * symbol.ModuleMm * PixelsPerMm;
        var (read, clear, readClear) = (0, 0, 0);
        for (var i = 0; i < Tries; i++)
        {
            var (stained, x, y, radius) = wear.Stained(0.08, left, left, edge, random);
            var text = Read(stained);
            Assert.True(text is null || text == symbol.Text, $"read '{text}'");
            var reads = text is null ? 0 : 1;
            read += reads;
            if (!MeetsACorner(x - left, y - left, radius, edge, edge / symbol.Count))
            {
                (clear, readClear) = (clear + 1, readClear + reads);
            }
        }

        var line = FormattableString.Invariant($"edge {edgeMm} mm, {symbol.Count} modules of {symbol.ModuleMm:0.000} mm, level {symbol.ErrorCorrection}, 8 % covered: {readClear} of {clear} read with the corner patterns clear, {read} of {Tries} with the stain anywhere");
        File.AppendAllText(Artefacts.Path("worn-codes.txt"), line + "\n");
        TestContext.Current.TestOutputHelper!.WriteLine(line);
        Assert.True(readClear >= clear * (symbol.Count == 21 ? 0.05 : 0.9), line);
    }

    /// <summary>No error correction restores a corner pattern, by which a reader finds the code (ISO/IEC 18004, 5.3.2).</summary>
    private static bool MeetsACorner(double x, double y, double radius, double edge, double module)
    {
        var pattern = 8 * module;
        return new[] { (0.0, 0.0), (edge - pattern, 0.0), (0.0, edge - pattern) }.Any(c =>
        {
            var dx = x - Math.Clamp(x, c.Item1, c.Item1 + pattern);
            var dy = y - Math.Clamp(y, c.Item2, c.Item2 + pattern);
            return (dx * dx) + (dy * dy) < radius * radius;
        });
    }

    private static (QrSymbol Symbol, Wear Wear) Code(double edgeMm)
    {
        var symbol = QrSymbol.Fit("K7F29", Words, edgeMm)!;
        var (grey, width, height) = PngRenderer.Grey(new Drawing(symbol.EdgeMm, symbol.EdgeMm, [symbol.Draw(new Position(0, 0))]), Dpi);
        return (symbol, new Wear(grey, width, height));
    }

    private static string? Read(Wear wear) => CodeReader.Read(wear.Grey, wear.Width, wear.Height);
}
