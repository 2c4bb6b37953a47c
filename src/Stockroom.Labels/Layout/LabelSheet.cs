using System.Runtime.ExceptionServices;
using Stockroom.Labels.Designs;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>Pages of labels, and the account of each label in the order given.</summary>
public sealed record LabelPages(IReadOnlyList<Drawing> Pages, IReadOnlyList<LabelFit> Fits);

/// <summary>Puts labels on the sheets of a stock.</summary>
public static class LabelSheet
{
    /// <summary>A printer that is farther off is loaded wrongly.</summary>
    public const double MostShiftMm = 10;

    /// <summary>Lays out every label and places it on its sheet, row by row.</summary>
    /// <param name="texts">At least one label.</param>
    /// <param name="stock">The sheet.</param>
    /// <param name="skip">Labels already used on the first sheet: 0 to one less than a sheet holds.</param>
    /// <param name="others">Stocks to propose where a label does not fit.</param>
    /// <param name="shift">Moves everything, to make up for a printer that prints beside the mark; at most <see cref="MostShiftMm"/>.</param>
    /// <param name="designs">Designs to set the labels by; the program's if not given.</param>
    /// <param name="design">The design asked for; else the usual one for the stock.</param>
    /// <exception cref="LabelException">Nothing to print, or more skipped than a sheet holds.</exception>
    public static LabelPages Render(
        IReadOnlyList<LabelText> texts, LabelStock stock, int skip = 0, IEnumerable<LabelStock>? others = null, Position shift = default,
        LabelDesigns? designs = null, Design? design = null)
    {
        if (texts.Count == 0)
        {
            throw new LabelException("there is no label to print; name at least one container");
        }

        if (skip < 0 || skip >= stock.PerSheet)
        {
            throw new LabelException(
                $"cannot skip {skip} labels of stock '{stock.Name}', whose sheet holds {stock.PerSheet}; skip 0 to {stock.PerSheet - 1}");
        }

        if (Math.Max(Math.Abs(shift.X), Math.Abs(shift.Y)) is var most && !(most <= MostShiftMm))
        {
            throw new LabelException($"cannot shift the print by {most} mm; at most {MostShiftMm} mm");
        }

        var fits = LayOut(texts, stock, others, designs ?? LabelDesigns.Default, design);
        var pages = new List<List<DrawingItem>>();
        for (var i = 0; i < fits.Length; i++)
        {
            var (sheet, place) = Math.DivRem(i + skip, stock.PerSheet);
            if (sheet == pages.Count)
            {
                pages.Add([]);
            }

            var box = stock.LabelBox(place);
            foreach (var area in stock.PrintAreas)
            {
                var at = area.Offset(box.Left + shift.X, box.Top + shift.Y);
                pages[sheet].Add(new Group($"label {texts[i].Id ?? "SAMPLE"}", at, fits[i].Drawing.Items.MovedBy(at.Left, at.Top)));
            }
        }

        return new LabelPages(
            [.. pages.Select(items => new Drawing(stock.PageWidthMm, stock.PageHeightMm, items))], fits);
    }

    /// <summary>Lays the labels out on all processors; the result does not depend on their number.</summary>
    private static LabelFit[] LayOut(
        IReadOnlyList<LabelText> texts, LabelStock stock, IEnumerable<LabelStock>? others, LabelDesigns designs, Design? design)
    {
        var fits = new LabelFit[texts.Count];
        var store = new ParagraphStore();
        IReadOnlyList<LabelStock> proposals = [.. others ?? []];
        try
        {
            Parallel.For(0, texts.Count, i => fits[i] = LabelLayout.LayOut(texts[i], stock, proposals, store, designs, design));
        }
        catch (AggregateException e) when (e.InnerException is LabelException first)
        {
            ExceptionDispatchInfo.Throw(first);
        }

        return fits;
    }
}
