using Stockroom.Labels.Codes;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>Finds the most generous plan that fits.</summary>
internal static class LabelSearch
{
    /// <summary>
    /// The first portion that fits at the smallest sizes, then the largest sizes at which it fits. Both are found by halving: less
    /// text and smaller type need less room.
    /// </summary>
    public static LabelFit Best(LabelContent content, LabelStock stock)
    {
        List<Portion> portions = [.. Portions.OptionalLast(content), .. Portions.RequiredLast(content)];
        var (found, _) = Halving.First(portions.Count, i => new Setting(content, stock, portions[i]).Tightest());
        if (found < 0)
        {
            return MarkOf(content, stock);
        }

        var (plan, items, code) = new Setting(content, stock, portions[found]).Largest();
        return Fit(content, stock, plan, items, code);
    }

    public static bool HoldsWhatIsRequired(LabelContent content, LabelStock stock) =>
        new Setting(content, stock, Portions.RequiredOnly(content)).Tightest() is not null;

    private static LabelFit MarkOf(LabelContent content, LabelStock stock)
    {
        foreach (var (portion, withCode) in MarkBlock.Ways(content))
        {
            if (MarkBlock.Place(content, stock, portion, withCode) is { } mark)
            {
                var notes = content.Notes.Append("only a mark of identity: the full label belongs on the outer packing or a tag");
                return new LabelFit
                {
                    Drawing = new Drawing(stock.PrintWidthMm, stock.PrintHeightMm, mark.Flow.Drawn()),
                    PictogramSideMm = null,
                    StatementXHeightMm = LabelDesign.SmallestXHeightMm,
                    Code = mark.Code,
                    LeftOff = [.. Portions.LeftOff(content, portion, mark.Code)],
                    Notes = [.. notes],
                };
            }
        }

        throw new LabelException(
            $"stock '{stock.Name}': a label of {stock.LabelWidthMm} x {stock.LabelHeightMm} mm holds not even the id '{content.Id}'");
    }

    private static LabelFit Fit(
        LabelContent content, LabelStock stock, Plan plan, IReadOnlyList<DrawingItem> items, QrSymbol? code)
    {
        double? side = plan.Portion.Pictograms > 0 ? plan.PictogramSideMm : null;
        var xHeight = plan.StatementMm * LabelFont.Of(Face.Regular).XHeightEm;
        var notes = content.Notes.ToList();
        if (side < LabelDesign.UsualPictogramSideMm)
        {
            notes.Add($"pictograms have sides of {side:0.#} mm; {LabelDesign.UsualPictogramSideMm} mm is usual where there is room");
        }

        if (plan.Portion.Hazards + plan.Portion.Precautions > 0 && xHeight < LabelDesign.UsualXHeightMm - 0.001)
        {
            notes.Add($"statements have an x-height of {xHeight:0.0#} mm; {LabelDesign.UsualXHeightMm} mm is asked of labels by Regulation (EU) 2024/2865");
        }

        return new LabelFit
        {
            Drawing = new Drawing(stock.PrintWidthMm, stock.PrintHeightMm, items),
            PictogramSideMm = side,
            StatementXHeightMm = xHeight,
            Code = code,
            LeftOff = [.. Portions.LeftOff(content, plan.Portion, code)],
            Notes = notes,
        };
    }
}
