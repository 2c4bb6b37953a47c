using Stockroom.Labels.Designs;
using Stockroom.Labels.Pictograms;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>
/// Lays out one label: the largest pictograms and type that hold everything, then smaller ones, then without the last
/// particulars; where what is required does not fit, the reductions that its edition allows; and where those do not fit
/// either, as much as fits and an account of the rest.
/// </summary>
public static class LabelLayout
{
    /// <summary>No more stocks than these are proposed for a label that is too small.</summary>
    private const int MostProposals = 5;

    /// <summary>Lays out one label; never throws for want of room, but says what was left off.</summary>
    /// <param name="text">What the label says.</param>
    /// <param name="stock">The label it is for.</param>
    /// <param name="others">Stocks to propose where this one is too small.</param>
    /// <param name="designs">Designs to set it by; the program's if not given.</param>
    /// <param name="design">The design asked for; else the usual one for the stock.</param>
    /// <exception cref="LabelException">A pictogram code that does not exist, or frames of the stock that do not match the pictograms.</exception>
    public static LabelFit LayOut(
        LabelText text, LabelStock stock, IEnumerable<LabelStock>? others = null, LabelDesigns? designs = null, Design? design = null) =>
        LayOut(text, stock, others, new ParagraphStore(), designs ?? LabelDesigns.Default, design);

    internal static LabelFit LayOut(
        LabelText text, LabelStock stock, IEnumerable<LabelStock>? others, ParagraphStore store, LabelDesigns designs, Design? design)
    {
        foreach (var code in text.Pictograms)
        {
            Pictogram.NameOf(code);
        }

        if (PreprintedFrames.Problem(text, stock) is { } problem)
        {
            var matching = (others ?? []).Where(o => o.Frames.Count == text.Pictograms.Count && text.Pictograms.Count > 0).Select(o => o.Name).ToList();
            throw new LabelException($"{problem}; {(matching.Count > 0 ? $"take {string.Join(" or ", matching)}" : "take a stock without frames")}");
        }

        var set = design ?? designs.For(stock);
        LabelFit Best(LabelText t) => LabelSearch.Best(new LabelContent(t, store), stock, set, designs.SmallerThan(set));
        if (text.Demands.PictogramSideMm < Legibility.UsualLeastPictogramSideMm
            && Best(text with { Demands = text.Demands with { PictogramSideMm = Legibility.UsualLeastPictogramSideMm } }) is { LacksRoom: false } ample)
        {
            return ample;
        }

        var fit = Best(text);
        if (!fit.LacksRoom)
        {
            return fit;
        }

        foreach (var relief in text.Reliefs)
        {
            fit = Best(relief.Text) with { Relief = relief.Says };
            if (!fit.LacksRoom)
            {
                return fit;
            }
        }

        var content = new LabelContent(text, store);
        var larger = (others ?? [])
            .Where(o => !string.Equals(o.Name, stock.Name, StringComparison.Ordinal) && InTheSamePrinter(o, stock))
            .OrderBy(o => o.LabelAreaMm2)
            .Where(o => LabelSearch.HoldsWhatIsRequired(content, o, design is { Layout: DesignLayout.Full } && design.Shapes.Contains(o.Shape) ? design : designs.For(o)))
            .Take(MostProposals)
            .Select(o => o.Name);
        return fit with { StocksThatWouldDo = [.. larger] };
    }

    /// <summary>Flat labels on the same paper or the same kind of roll.</summary>
    private static bool InTheSamePrinter(LabelStock other, LabelStock stock) =>
        other.Medium == stock.Medium && other.Shape is (StockShape.Rectangle or StockShape.Card)
        && (stock.Medium != StockMedium.Sheet || Math.Abs(other.PageWidthMm - stock.PageWidthMm) < 0.5);
}
