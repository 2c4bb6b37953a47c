using Stockroom.Labels.Drawings;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Tests.Layout;

public sealed class LabelLayoutTests
{
    private static readonly LabelStocks Stocks = LabelStocks.Load();
    private static readonly LabelStock Bottle = Stocks.Named("a4-2x4");
    private static readonly LabelStock Tiny = Stocks.Named("a4-4x12");

    [Fact]
    public void UsualReagent_OnBottleLabel_IsComplete()
    {
        var fit = LabelLayout.LayOut(Samples.NitricAcid, Bottle, Stocks.All);

        Assert.True(fit.IsComplete);
        Assert.Empty(fit.LeftOff);
        Assert.Empty(fit.StocksThatWouldDo);
        Assert.True(fit.StatementXHeightMm >= 1.2 - 1e-9);
    }

    [Fact]
    public void RoomEnough_Pictograms_HaveTheUsualSide()
    {
        var fit = LabelLayout.LayOut(Samples.UraniumMetal, Bottle);

        Assert.True(fit.PictogramSideMm >= 16);
        Assert.Empty(fit.Notes);
    }

    [Fact]
    public void PictogramUnderUsualSide_IsSaid() =>
        Assert.Contains(LabelLayout.LayOut(Samples.Chromate, Bottle).Notes, n => n.StartsWith("pictograms have sides of", StringComparison.Ordinal));

    [Fact]
    public void TooSmallLabel_SaysWhatIsLeftOffAndWhichStockWouldDo()
    {
        var fit = LabelLayout.LayOut(Samples.NitricAcid, Tiny, Stocks.All);

        Assert.False(fit.IsComplete);
        Assert.Contains(new LeftOff("hazard statement H314", Required: true), fit.LeftOff);
        Assert.Contains(new LeftOff("Amount", Required: false), fit.LeftOff);
        Assert.Contains("a4-2x4", fit.StocksThatWouldDo);
        Assert.DoesNotContain("a4-4x12", fit.StocksThatWouldDo);
        Assert.All(fit.StocksThatWouldDo, s => Assert.True(LabelLayout.LayOut(Samples.NitricAcid, Stocks.Named(s)).IsComplete));
    }

    [Fact]
    public void TooSmallLabel_KeepsTheWorstPictogram()
    {
        var some = 0;
        foreach (var stock in Stocks.All.Where(s => s.Frames.Count == 0))
        {
            var fit = LabelLayout.LayOut(Samples.Chromate, stock);
            var kept = Geometry.PictogramsOf(fit.Drawing.Items).Select(g => g.Name[..5]).ToList();
            Assert.Equal(Samples.Chromate.Pictograms.Except(kept), Samples.Chromate.Pictograms.Where(p => fit.LeftOff.Any(l => l.What == $"pictogram {p}")));
            if (kept.Count is > 0 and < 5)
            {
                // CLP Annex I 1.5.2.4: GHS06 and GHS08 may take precedence over GHS01 and GHS05.
                Assert.Contains("GHS06", kept);
                Assert.DoesNotContain("GHS09", kept);
                some++;
            }
        }

        Assert.True(some > 0, "no stock was small enough to choose between pictograms");
    }

    [Fact]
    public void SmallLabel_ShowsAllPictogramsAsMarks_AndSaysSo()
    {
        var fit = LabelLayout.LayOut(Samples.Chromate, Tiny);

        Assert.Equal(Samples.Chromate.Pictograms, Geometry.PictogramsOf(fit.Drawing.Items).Select(g => g.Name[..5]));
        Assert.InRange(fit.PictogramSideMm!.Value, 5, 9.99);
        Assert.Contains("Workplace label only.", Geometry.Words(fit.Drawing.Items));
        Assert.Contains(fit.LeftOff, l => l.Required && l.What.StartsWith("pictograms with sides of 10 mm (CLP Annex I", StringComparison.Ordinal));
    }

    [Fact]
    public void NameOf200Characters_ShrinksAndWraps_AndStandsInFull()
    {
        var title = Samples.LongName.Title;
        Assert.Equal(200, title.Length);

        foreach (var stock in Stocks.All.Where(s => s.Frames.Count == 0))
        {
            var fit = LabelLayout.LayOut(Samples.LongName, stock);
            if (fit.LeftOff.Any(l => l.What.Contains("the name", StringComparison.Ordinal)))
            {
                Assert.True(stock.PrintAreas[0].Width * stock.PrintAreas[0].Height < 1500, $"{stock.Name} has room for a long name");
                continue;
            }

            var lines = fit.Drawing.Items.OfType<TextRun>().TakeWhile(t => t.Text != "Danger").Select(t => t.Text);
            Assert.Contains(title.Replace(" ", string.Empty), string.Concat(lines).Replace(" ", string.Empty));
        }
    }

    [Fact]
    public void ShortName_IsLargerThanLongOne()
    {
        double Size(LabelText text) => LabelLayout.LayOut(text, Bottle).Drawing.Items.OfType<TextRun>().First(t => text.Title.StartsWith(t.Text, StringComparison.Ordinal)).SizeMm;

        Assert.True(Size(Samples.NitricAcid) > 2 * Size(Samples.LongName));
    }

    [Fact]
    public void ControlCharacters_AreNotPrinted()
    {
        var fit = LabelLayout.LayOut(Samples.Gold with { Title = "Gold\u0000\u001b[31m\r\n\tnative\u202e" }, Bottle);
        var words = Geometry.Words(fit.Drawing.Items);

        Assert.DoesNotContain(words, char.IsControl);
        Assert.Contains("Gold [31m native", words);
        Assert.DoesNotContain('\u202e', words);
    }

    [Fact]
    public void CharacterTheFontLacks_IsReplacedAndSaid()
    {
        var fit = LabelLayout.LayOut(Samples.Gold with { Title = "Gold 金" }, Bottle);

        Assert.Contains("Gold ?", Geometry.Words(fit.Drawing.Items));
        Assert.Contains("the font has no character '金' (U+91D1); printed as '?'", fit.Notes);
    }

    [Theory]
    [InlineData("αβγδωμΩ≥≤°·µ±×–—’“”…½€ÅČŠŽøß₀₁₂₃₄₅₆₇₈₉⁺⁻²³")]
    [InlineData("ABCXYZabcxyz0123456789(){}[]<>/+-=%&#*'\"!?,.;:")]
    public void CharactersOfChemicalNames_AreAllInTheFont(string characters)
    {
        var fit = LabelLayout.LayOut(Samples.Gold with { Title = characters }, Bottle);

        Assert.Empty(fit.Notes);
    }

    [Theory]
    [InlineData("H2SO4", "H₂SO₄")]
    [InlineData("CuSO4·5H2O", "CuSO₄·5H₂O")]
    [InlineData("(C2H5)2O · CAS 60-29-7", "(C₂H₅)₂O · CAS 60-29-7")]
    [InlineData("K4[Fe(CN)6]", "K₄[Fe(CN)₆]")]
    [InlineData("HNO3, 65 %", "HNO₃, 65 %")]
    [InlineData("Lot 12, shelf B2x", "Lot 12, shelf B2x")]
    [InlineData("2-propanol 70 %", "2-propanol 70 %")]
    public void Formula_InTheNote_HasSubscripts(string note, string expected)
    {
        var fit = LabelLayout.LayOut(Samples.Gold with { TitleNote = note }, Bottle);

        Assert.Contains(fit.Drawing.Items.OfType<TextRun>(), t => t.Text == expected);
    }

    [Fact]
    public void UnknownPictogram_IsRefused()
    {
        var error = Assert.Throws<LabelException>(() => LabelLayout.LayOut(Samples.Ether with { Pictograms = ["GHS10"] }, Bottle));

        Assert.Equal("there is no hazard pictogram 'GHS10'; the codes are GHS01 to GHS09", error.Message);
    }

    [Fact]
    public void NoId_PrintsSample()
    {
        var fit = LabelLayout.LayOut(Samples.SampleOfWarning, Bottle);

        Assert.Contains("SAMPLE", Geometry.Words(fit.Drawing.Items));
        Assert.StartsWith("STOCKROOM:SAMPLE\n", fit.Code!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void LineSpacing_OfStatements_IsAtLeast120PercentOfTheTypeSize()
    {
        // CLP Annex I 1.2.1.5
        var lines = LabelLayout.LayOut(Samples.NitricAcid, Bottle).Drawing.Items.OfType<TextRun>()
            .GroupBy(t => (t.SizeMm, t.Baseline.X)).SelectMany(g => g.Zip(g.Skip(1)));

        Assert.All(lines, pair => Assert.True(pair.Second.Baseline.Y == pair.First.Baseline.Y
            || Math.Abs(pair.Second.Baseline.Y - pair.First.Baseline.Y) >= (1.2 * pair.First.SizeMm) - 1e-9));
    }
}
