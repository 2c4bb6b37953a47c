using Stockroom.Chemistry.Hazards;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Rules;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Tests.Rules;

/// <summary>Sizes of CLP Annex I Table 1.3, letter heights of Regulation (EU) 2024/2865, measured on what is drawn.</summary>
public sealed class LabelDemandsTests
{
    private static readonly LabelStocks Stocks = LabelStocks.Load();

    [Theory]
    [InlineData(1, 10, 1.2)]
    [InlineData(500, 10, 1.2)]
    [InlineData(501, 10, 1.4)]
    [InlineData(3000, 10, 1.4)]
    [InlineData(3001, 23, 1.8)]
    [InlineData(50000, 23, 1.8)]
    [InlineData(50001, 32, 2.0)]
    [InlineData(500000, 32, 2.0)]
    [InlineData(500001, 46, 2.0)]
    public void Formatting2024_ByCapacity_IsKeptOnTheDrawnLabel(int millilitres, double side, double xHeight)
    {
        var demands = DemandsOf.For(RuleSet.Eu, millilitres, formatting2024: true);
        var fit = LabelLayout.LayOut(Samples.UraniumMetal with { Demands = demands }, Stocks.Named("a4-door-card"));

        Assert.Equal(side, demands.PictogramSideMm);
        Assert.True(fit.IsComplete, string.Join("; ", fit.LeftOff));
        Assert.All(Geometry.PictogramsOf(fit.Drawing.Items), g => Assert.True(g.Area.Width / Math.Sqrt(2) >= side - 1e-6));
        var statements = fit.Drawing.Items.OfType<TextRun>().Where(t => Samples.UraniumMetal.HazardStatements.Any(h => h.Text.StartsWith(t.Text, StringComparison.Ordinal))).ToList();
        Assert.NotEmpty(statements);
        Assert.All(statements, t => Assert.True(t.SizeMm * 1082 / 2048 >= xHeight - 1e-6, $"x-height {t.SizeMm * 1082 / 2048} under {xHeight}"));

        // Black on white: nothing is printed in white, and the warning stands in an outlined plate.
        Assert.DoesNotContain(fit.Drawing.Items.Leaves().OfType<TextRun>(), t => t.Ink != Ink.Black);
    }

    [Theory]
    [InlineData(3000, 52, 74, true)]
    [InlineData(3001, 74, 105, false)]
    [InlineData(50001, 105, 148, false)]
    [InlineData(500001, 148, 210, false)]
    public void LabelSize_ByCapacity_IsThatOfTheTable(int millilitres, double shorter, double longer, bool ifPossible)
    {
        var demands = DemandsOf.For(RuleSet.Eu, millilitres);

        Assert.Equal((shorter, longer), demands.LabelMm);
        Assert.Equal(ifPossible, demands.LabelMmIfPossible);
    }

    [Fact]
    public void LabelTooSmallForTheCan_IsNotComplete_AndALargerOneIsProposed()
    {
        var can = Samples.SampleOfWarning with { Demands = DemandsOf.For(RuleSet.Eu, 5000) };
        var small = LabelLayout.LayOut(can, Stocks.Named("a4-2x4"), Stocks.All);

        Assert.Contains(small.LeftOff, l => l.Required && l.What == "the package asks for a label of 74 x 105 mm (CLP Annex I 1.2.1.4); this one is 67.7 x 99.1 mm");
        Assert.NotEmpty(small.StocksThatWouldDo);
        Assert.All(small.StocksThatWouldDo, s => Assert.True(LabelLayout.LayOut(can, Stocks.Named(s)).IsComplete, s));
        Assert.Contains(
            LabelLayout.LayOut(Samples.Gold with { Demands = DemandsOf.For(RuleSet.Eu, 2000) }, Stocks.Named("a4-3x8")).Notes,
            n => n.StartsWith("the package asks for a label of 52 x 74 mm if possible", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(RuleSet.Un)]
    [InlineData(RuleSet.Us)]
    public void OtherEditions_KnowNoLeastPictogram_AndMakeNoMarksOfSmallOnes(RuleSet rules)
    {
        var text = Samples.Chromate with { HazardStatements = [], PrecautionaryStatements = [], Details = [], Footnotes = [], Demands = DemandsOf.For(rules, 20) };
        var fit = LabelLayout.LayOut(text, Stocks.Named("a4-4x12"));

        Assert.InRange(fit.PictogramSideMm!.Value, 5, 9.99);
        Assert.DoesNotContain("Workplace", Geometry.Words(fit.Drawing.Items));
        Assert.True(fit.IsComplete, string.Join("; ", fit.LeftOff));
    }

    [Fact]
    public void BlackFrames_AreBlack_AndIncompleteUnlessAllowed()
    {
        var demands = DemandsOf.For(RuleSet.Eu, 500, frame: FrameStyle.Black);
        var fit = LabelLayout.LayOut(Samples.Ether with { Demands = demands }, Stocks.Named("a4-2x4"));
        var allowed = LabelLayout.LayOut(Samples.Ether with { Demands = demands with { BlackFramesAllowed = true } }, Stocks.Named("a4-2x4"));

        Assert.DoesNotContain(fit.Drawing.Items.Leaves().OfType<FilledPath>(), f => f.Ink == Ink.Red);
        Assert.Contains(fit.LeftOff, l => l.Required && l.What.StartsWith("red frames", StringComparison.Ordinal));
        Assert.True(allowed.IsComplete);
    }

    [Fact]
    public void BlackFrames_AreNoWantOfRoom_SoNoReliefAndNoOtherStockMendsThem()
    {
        var reduced = Samples.Ether with { HazardStatements = [] };
        var text = Samples.Ether with { Demands = DemandsOf.For(RuleSet.Eu, 500, frame: FrameStyle.Black), Reliefs = [new Relief(reduced, "without statements")] };
        var fit = LabelLayout.LayOut(text, Stocks.Named("a4-2x4"), Stocks.All);

        Assert.False(fit.IsComplete);
        Assert.False(fit.LacksRoom);
        Assert.Null(fit.Relief);
        Assert.Empty(fit.StocksThatWouldDo);
    }

    [Theory]
    [InlineData(RuleSet.Us)]
    [InlineData(RuleSet.Un)]
    public void WhereOnlyLegibleIsAsked_PictogramsAreSmallOnlyForWantOfRoom_AndNoRuleOfTheUnionIsCited(RuleSet rules)
    {
        var text = Samples.NitricAcid with { Demands = DemandsOf.For(rules, 500) };
        foreach (var stock in Stocks.All.Where(s => s.Frames.Count == 0))
        {
            var fit = LabelLayout.LayOut(text, stock);
            var ample = LabelLayout.LayOut(text with { Demands = text.Demands with { PictogramSideMm = 10 } }, stock);

            Assert.DoesNotContain(fit.Notes, n => n.Contains("(EU)", StringComparison.Ordinal));
            Assert.True(fit.PictogramSideMm is null or >= 10 || ample.LacksRoom, $"{stock.Name}: {fit.PictogramSideMm} mm");
        }
    }

    [Fact]
    public void Relief_IsAppliedOnlyWhereTheWholeDoesNotFit_AndSaid()
    {
        var reduced = Samples.NitricAcid with { HazardStatements = [], PrecautionaryStatements = [], Remarks = ["Full label on the outer packing or tag."] };
        var text = Samples.NitricAcid with { Reliefs = [new Relief(reduced, "statements are left off, by clause 1")] };
        var large = LabelLayout.LayOut(text, Stocks.Named("a4-1x2"));
        var small = LabelLayout.LayOut(text, Stocks.Named("a4-5x13"));

        Assert.Null(large.Relief);
        Assert.Equal("statements are left off, by clause 1", small.Relief);
        Assert.Contains("Full label on the outer packing or tag.", Geometry.Words(small.Drawing.Items));
        Assert.DoesNotContain("Not all hazards are shown", Geometry.Words(small.Drawing.Items));
    }
}
