using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Pictograms;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>
/// Lays out one label: the largest pictograms and type that hold everything, then smaller ones, then without the last
/// particulars; and where even what is required does not fit, as much as fits and an account of the rest.
/// </summary>
public static class LabelDesign
{
    /// <summary>No pictogram is smaller: 1 cm2 (CLP Annex I 1.2.1.3, and Table 1.3 for packages up to 3 L).</summary>
    public const double SmallestPictogramSideMm = 10;

    /// <summary>Side to keep where possible for packages up to 3 L (CLP Annex I 1.2.1.4 Table 1.3).</summary>
    public const double UsualPictogramSideMm = 16;

    /// <summary>x-height of statements on packages up to 0.5 L (CLP Annex I 1.2.1.4 Table 1.3 as amended by Regulation (EU) 2024/2865).</summary>
    public const double UsualXHeightMm = 1.2;

    /// <summary>x-height under which print is no longer counted as legible (Regulation (EU) No 1169/2011 Art. 13(3), small packages).</summary>
    public const double SmallestXHeightMm = 0.9;

    /// <summary>No more stocks than these are proposed for a label that is too small.</summary>
    private const int MostProposals = 5;

    /// <summary>Type size with that x-height.</summary>
    public static double SmallestTypeMm { get; } = SmallestXHeightMm / LabelFont.Of(Face.Regular).XHeightEm;

    /// <summary>Lays out one label; never throws for want of room, but says what was left off.</summary>
    /// <param name="text">What the label says.</param>
    /// <param name="stock">The label it is for.</param>
    /// <param name="others">Stocks to propose where this one is too small.</param>
    /// <exception cref="LabelException">A pictogram code that does not exist.</exception>
    public static LabelFit LayOut(LabelText text, LabelStock stock, IEnumerable<LabelStock>? others = null) =>
        LayOut(text, stock, others, new ParagraphStore());

    internal static LabelFit LayOut(LabelText text, LabelStock stock, IEnumerable<LabelStock>? others, ParagraphStore store)
    {
        foreach (var code in text.Pictograms)
        {
            Pictogram.NameOf(code);
        }

        var content = new LabelContent(text, store);
        var fit = LabelSearch.Best(content, stock);
        if (fit.IsComplete)
        {
            return fit;
        }

        var larger = (others ?? [])
            .Where(o => !string.Equals(o.Name, stock.Name, StringComparison.Ordinal) && InTheSamePrinter(o, stock))
            .OrderBy(o => o.LabelAreaMm2)
            .Where(o => LabelSearch.HoldsWhatIsRequired(content, o))
            .Take(MostProposals)
            .Select(o => o.Name);
        return fit with { StocksThatWouldDo = [.. larger] };
    }

    /// <summary>Flat labels on the same paper or the same kind of roll.</summary>
    private static bool InTheSamePrinter(LabelStock other, LabelStock stock) =>
        other.Medium == stock.Medium && other.Shape is (StockShape.Rectangle or StockShape.Card)
        && (stock.Medium != StockMedium.Sheet || Math.Abs(other.PageWidthMm - stock.PageWidthMm) < 0.5);
}
