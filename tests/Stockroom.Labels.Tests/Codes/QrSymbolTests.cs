using QRCoder;
using Stockroom.Labels.Codes;
using Stockroom.Labels.Drawings;

namespace Stockroom.Labels.Tests.Codes;

/// <summary>Quiet zone of four modules and the meaning of the matrix: ISO/IEC 18004. Read back with ZXing.</summary>
public sealed class QrSymbolTests
{
    private static readonly IReadOnlyList<string> Words =
        QrText.Words("Nitric acid 65 %", [], "Danger", "Causes severe skin burns and eye damage");

    [Theory]
    [InlineData(32)]
    [InlineData(22)]
    [InlineData(17)]
    [InlineData(14)]
    [InlineData(11)]
    public void Code_OfAnySize_ReadsBackExactly(double edgeMm)
    {
        var symbol = QrSymbol.Fit("K7F2-9T", Words, edgeMm);

        Assert.NotNull(symbol);
        Assert.Equal(symbol.Text, QrRaster.Read(symbol));
        Assert.True(symbol.EdgeMm <= edgeMm + 1e-9);
        Assert.True(symbol.ModuleMm >= 0.375);
    }

    [Fact]
    public void Text_WithRoom_IsIdLineEndAndWords()
    {
        var symbol = QrSymbol.Fit("K7F2-9T", Words, 30)!;

        Assert.Equal("STOCKROOM:K7F2-9T\nNitric acid 65 %. Danger: Causes severe skin burns and eye damage", symbol.Text);
    }

    [Fact]
    public void Text_WithLessRoom_KeepsTheSignalWordBeforeTheStatement()
    {
        var symbol = QrSymbol.Fit("K7F2-9T", Words, 15.5)!;

        Assert.Equal("STOCKROOM:K7F2-9T\nNitric acid 65 %. Danger", symbol.Text);
    }

    [Fact]
    public void Text_OnTheSmallest_IsTheIdAlone() => Assert.Equal("STOCKROOM:K7F2-9T", QrSymbol.Fit("K7F2-9T", Words, 11)!.Text);

    [Fact]
    public void Text_OfASample_BeginsWithTheWordSample() =>
        Assert.Equal("STOCKROOM:SAMPLE\nGold", QrSymbol.Fit(null, QrText.Words("Gold", [], null, null), 25)!.Text);

    [Fact]
    public void NoRoomForTheId_GivesNoCode() => Assert.Null(QrSymbol.Fit("K7F2-9T", Words, 10));

    [Fact]
    public void LongName_IsCut_AndTheHazardKept()
    {
        var words = QrText.Words(Samples.LongName.Title, ["HANDS OFF"], "Danger", "Toxic if inhaled");

        Assert.All(words, w => Assert.Contains("HANDS OFF. Danger", w));
        Assert.All(words, w => Assert.DoesNotContain("....", w));
        Assert.True(words[^1].Length < 45);
    }

    [Fact]
    public void LongWarnings_GiveWay_SoThatTheCodeSaysAtLeastWhatItIs() =>
        Assert.Equal(
            "Contents unknown. Danger",
            QrText.Words("Contents unknown", ["Treat as toxic, corrosive, flammable and reactive until identified"], "Danger", "Causes severe skin burns")[^2]);

    [Theory]
    [InlineData("Säure für Größen, Çelik", "Saure fur Grossen, Celik")]
    [InlineData("α-pinene · 20 °C", "alpha-pinene . 20 deg C")]
    [InlineData("H₂SO₄ ≥ 95 %", "H2SO4 >= 95 %")]
    public void Words_ArePlainAscii(string name, string expected) =>
        Assert.Equal(expected, QrText.Words(name, [], null, null)[0]);

    [Fact]
    public void MoreRoom_NeverMeansSmallerModulesForTheSameText()
    {
        var symbols = Enumerable.Range(22, 20).Select(mm => QrSymbol.Fit("K7F2-9T", Words, mm)!).ToList();

        Assert.All(symbols.GroupBy(s => (s.Text, s.ErrorCorrection)), g => Assert.Equal(g.Select(s => s.ModuleMm).Order(), g.Select(s => s.ModuleMm)));
    }

    [Theory]
    [InlineData('L', QRCodeGenerator.ECCLevel.L)]
    [InlineData('M', QRCodeGenerator.ECCLevel.M)]
    [InlineData('Q', QRCodeGenerator.ECCLevel.Q)]
    [InlineData('H', QRCodeGenerator.ECCLevel.H)]
    public void Capacity_AtEveryStep_IsThatOfTheGenerator(char level, QRCodeGenerator.ECCLevel correction)
    {
        // On both sides of every step from one version to the next, wherever the table puts it.
        foreach (var filler in "aA")
        {
            var steps = Enumerable.Range(1, 400).Where(n => At(n) != At(n + 1)).SelectMany(n => new[] { n, n + 1 });
            foreach (var length in steps.Append(1))
            {
                using var data = QRCodeGenerator.GenerateQrCode(new string(filler, length), correction);
                var modules = data.ModuleMatrix.Count - (2 * QrSymbol.QuietModules);

                Assert.Equal(modules <= 57 ? modules : null, At(length));
            }

            int? At(int length) => QrCapacity.ModulesFor(new string(filler, length), level);
        }
    }

    [Fact]
    public void DrawnOutline_CoversExactlyTheDarkModules()
    {
        var symbol = QrSymbol.Fit("K7F2-9T", Words, 25)!;
        var drawn = symbol.Draw(new Position(2, 3));
        var path = Assert.IsType<FilledPath>(Assert.Single(drawn.Items.Leaves())).Path;

        for (var row = 0; row < symbol.Count; row++)
        {
            for (var column = 0; column < symbol.Count; column++)
            {
                var x = 2 + ((QrSymbol.QuietModules + column + 0.5) * symbol.ModuleMm);
                var y = 3 + ((QrSymbol.QuietModules + row + 0.5) * symbol.ModuleMm);
                Assert.Equal(symbol.Modules[row, column], IsInside(path, x, y));
            }
        }

        Assert.Equal(4 * symbol.ModuleMm, path.Bounds.Left - drawn.Area.Left, 9);
        Assert.Equal(4 * symbol.ModuleMm, drawn.Area.Bottom - path.Bounds.Bottom, 9);
    }

    /// <summary>Even-odd rule: a ray to the right crosses the outline an odd number of times.</summary>
    private static bool IsInside(VectorPath path, double x, double y)
    {
        var inside = false;
        var from = default(Position);
        foreach (var segment in path.Segments)
        {
            if (segment.Kind != SegmentKind.Move && from.Y > y != segment.End.Y > y
                && x < ((segment.End.X - from.X) * (y - from.Y) / (segment.End.Y - from.Y)) + from.X)
            {
                inside = !inside;
            }

            from = segment.End;
        }

        return inside;
    }
}
