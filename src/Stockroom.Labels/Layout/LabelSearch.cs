using Stockroom.Labels.Codes;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>Tries plans from the most generous to the tightest and keeps the first that fits.</summary>
internal static class LabelSearch
{
    public static LabelFit Best(LabelContent content, LabelStock stock)
    {
        foreach (var portion in Portions.OptionalLast(content))
        {
            if (Try(content, stock, portion) is { } fit)
            {
                return fit;
            }
        }

        foreach (var portion in Portions.RequiredLast(content))
        {
            if (Try(content, stock, portion) is { } fit)
            {
                return fit;
            }
        }

        throw new LabelException(
            $"stock '{stock.Name}': a label of {stock.LabelWidthMm} x {stock.LabelHeightMm} mm holds not even the name '{content.TitleText}'");
    }

    public static bool HoldsWhatIsRequired(LabelContent content, LabelStock stock) =>
        Try(content, stock, Portions.RequiredOnly(content)) is not null;

    private static LabelFit? Try(LabelContent content, LabelStock stock, Portion portion)
    {
        var composer = new Composer(content, stock);
        var room = (stock.LabelWidthMm - (2 * stock.PaddingMm)) * (stock.LabelHeightMm - stock.PaddingMm);
        bool Roomy(Plan plan) => content.LeastAreaMm2(plan) <= room;

        // What does not fit at the smallest sizes is not worth trying at all the others.
        if (!Plans.Tightest(content, stock, portion).Any(p => Roomy(p) && composer.Compose(p) is not null))
        {
            return null;
        }

        foreach (var plan in Plans.For(content, stock, portion).Where(Roomy))
        {
            if (composer.Compose(plan) is { } done)
            {
                return Fit(content, stock, plan, done.Items, done.Code);
            }
        }

        return null;
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
            Drawing = new Drawing(stock.LabelWidthMm, stock.LabelHeightMm, items),
            PictogramSideMm = side,
            StatementXHeightMm = xHeight,
            Code = code,
            LeftOff = [.. Portions.LeftOff(content, plan.Portion, code)],
            Notes = notes,
        };
    }
}
