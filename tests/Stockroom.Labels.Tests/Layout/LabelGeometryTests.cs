using CsCheck;
using Stockroom.Labels.Codes;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Tests.Layout;

/// <summary>Sizes are those of CLP Annex I 1.2.1.3-1.2.1.5 and ISO/IEC 18004; measured on what is drawn, not on what was planned.</summary>
public sealed class LabelGeometryTests
{
    /// <summary>Labels tried on each stock; STOCKROOM_LABELS asks for more, as the checks before a release do.</summary>
    private static readonly int Labels = int.TryParse(Environment.GetEnvironmentVariable("STOCKROOM_LABELS"), out var labels) ? labels : 20;

    public static TheoryData<string> StockNames() => [.. LabelStocks.Load().All.Where(s => s.Frames.Count == 0).Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(StockNames))]
    public void DrawnSheet_OfSamples_HasNothingOutsideOrOverlapping(string name)
    {
        var stock = LabelStocks.Load().Named(name);
        var pages = LabelSheet.Render(Samples.All, stock);

        foreach (var label in pages.Pages.SelectMany(p => p.Items).Cast<Group>())
        {
            AssertNoFault(Geometry.Faults(label.Area, label.Items));
        }
    }

    [Theory]
    [MemberData(nameof(StockNames))]
    public void DrawnLabel_OfAnyText_HasNothingOutsideOrOverlapping(string name)
    {
        var stock = LabelStocks.Load().Named(name);
        var label = new Box(0, 0, stock.PrintWidthMm, stock.PrintHeightMm);

        RandomLabels.Any.Sample(
            text =>
            {
                var fit = LabelLayout.LayOut(text, stock);
                AssertNoFault(Geometry.Faults(label, fit.Drawing.Items));
                AssertSizes(fit);
            },
            iter: Labels);
    }

    [Theory]
    [MemberData(nameof(StockNames))]
    public void EverythingGiven_IsDrawnOrSaidToBeLeftOff(string name)
    {
        var stock = LabelStocks.Load().Named(name);
        foreach (var text in Samples.All)
        {
            var fit = LabelLayout.LayOut(text, stock);
            var words = Geometry.Solid(Geometry.Words(fit.Drawing.Items));
            var leftOff = fit.LeftOff.Select(l => l.What).ToHashSet();

            foreach (var statement in text.HazardStatements)
            {
                Assert.NotEqual(words.Contains(Geometry.Solid(statement.Text)), leftOff.Contains($"hazard statement {statement.Code}"));
            }

            foreach (var statement in text.PrecautionaryStatements)
            {
                Assert.NotEqual(words.Contains(Geometry.Solid(statement.Text)), leftOff.Contains($"precautionary statement {statement.Code}"));
            }

            var drawn = Geometry.PictogramsOf(fit.Drawing.Items).Select(g => g.Name[..5]).ToList();
            Assert.Equal(text.Pictograms.Where(p => !leftOff.Contains($"pictogram {p}")), drawn);
            Assert.All(text.Details, d => Assert.NotEqual(words.Contains(Geometry.Solid(d.Label + d.Value)), leftOff.Contains(d.Label)));
            Assert.All(text.Extra, e => Assert.NotEqual(words.Contains(Geometry.Solid(e)), leftOff.Contains($"'{e}'")));
            Assert.Contains(text.Id ?? QrText.Sample, words);
            Assert.Equal(text.SignalWord is null || leftOff.Contains($"signal word {text.SignalWord}"), !words.Contains(text.SignalWord ?? "Danger"));
            if (fit.Notes.Any(n => n.StartsWith("only a mark of identity", StringComparison.Ordinal)))
            {
                continue; // It carries no hazards and has no room for a remark about them; the account says so.
            }

            var hazardsShort = leftOff.Any(l => l.StartsWith("hazard statement", StringComparison.Ordinal) || l.StartsWith("pictogram", StringComparison.Ordinal));
            var precautionsShort = leftOff.Any(l => l.StartsWith("precautionary", StringComparison.Ordinal));
            Assert.Equal(hazardsShort, words.Contains("Notallhazardsareshown"));
            Assert.Equal(precautionsShort && !hazardsShort, words.Contains("Notallprecautionsareshown"));
        }
    }

    private static void AssertNoFault(IReadOnlyList<string> faults) => Assert.True(faults.Count == 0, string.Join("; ", faults));

    private static void AssertSizes(LabelFit fit)
    {
        foreach (var pictogram in Geometry.PictogramsOf(fit.Drawing.Items))
        {
            // CLP Annex I 1.2.1.3: 1 cm2; a smaller one is a mark, and the label says so.
            var side = pictogram.Area.Width / Math.Sqrt(2);
            var mark = Geometry.Solid(Geometry.Words(fit.Drawing.Items)).Contains("Workplacelabelonly.");
            Assert.True(side >= 10 - 1e-9 || (mark && side >= 5 - 1e-9), $"a pictogram of side {side} is neither 1 cm2 nor said to be a mark");
            Assert.Equal(side < 10 - 1e-9, fit.LeftOff.Any(l => l.Required && l.What.StartsWith("pictograms with sides of 10 mm", StringComparison.Ordinal)));
        }

        foreach (var run in fit.Drawing.Items.Leaves().OfType<TextRun>())
        {
            Assert.True(run.SizeMm * 1082 / 2048 >= 0.9 - 1e-9, $"'{run.Text}' is too small to read");
        }

        if (fit.Code is { } code)
        {
            Assert.True(code.ModuleMm >= 3 * 25.4 / 203 - 1e-9, "a module is at least three dots at 203 dpi");
        }
    }
}
