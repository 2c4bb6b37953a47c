using System.Globalization;
using Stockroom.Labels.Designs;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>Finds the most generous plan that fits.</summary>
internal static class LabelSearch
{
    /// <summary>
    /// The first portion that fits at the smallest sizes, then the largest sizes at which it fits. Both are found by halving: less
    /// text and smaller type need less room. Where no portion fits, the next smaller design takes over.
    /// </summary>
    public static LabelFit Best(LabelContent content, LabelStock stock, Design design, Design? smaller)
    {
        if (design.Layout == DesignLayout.Mark)
        {
            return MarkOf(content, stock, design);
        }

        List<Portion> portions = [.. Portions.Shrinking(content, design)];
        if (stock.Frames.Count > 0)
        {
            // What a frame is there for stays.
            portions.RemoveAll(p => p.Pictograms < content.Pictograms.Count);
        }

        var (found, _) = Halving.First(portions.Count, i => new Setting(content, stock, design, portions[i]).Tightest());
        if (found < 0)
        {
            return smaller is null || stock.Frames.Count > 0 ? throw TooSmall(content, stock) : MarkOf(content, stock, smaller);
        }

        var (plan, items, code) = new Setting(content, stock, design, portions[found]).Largest();
        return Fit(content, stock, design, plan, items, code);
    }

    public static bool HoldsWhatIsRequired(LabelContent content, LabelStock stock, Design design) =>
        design.Layout == DesignLayout.Full && stock.Frames.Count == 0 && LabelSize.Shortfall(content.Demands, stock) is not { Required: true }
        && new Setting(content, stock, design, Portions.RequiredOnly(content, design)).Tightest() is not null;

    private static LabelFit MarkOf(LabelContent content, LabelStock stock, Design design)
    {
        if (new MarkBlock(content, stock, design).Best() is not { } mark)
        {
            throw TooSmall(content, stock);
        }

        return new LabelFit
        {
            Design = design.Name,
            Drawing = new Drawing(stock.PrintWidthMm, stock.PrintHeightMm, mark.Flow.Drawn()),
            PictogramSideMm = mark.Side,
            StatementXHeightMm = Legibility.SmallestXHeightMm,
            Code = mark.Code,
            LeftOff = [.. Portions.LeftOff(content, design, mark.Portion, mark.Code), .. Sizes(content, stock, mark.Portion, mark.Side)],
            Notes = [.. content.Notes, "only a mark of identity: the full label belongs on the outer packing or a tag"],
        };
    }

    private static LabelException TooSmall(LabelContent content, LabelStock stock) => new(
        $"stock '{stock.Name}': a label of {stock.LabelWidthMm} x {stock.LabelHeightMm} mm holds not even the id '{content.Id}'");

    private static LabelFit Fit(
        LabelContent content, LabelStock stock, Design design, Plan plan, IReadOnlyList<DrawingItem> items, Codes.QrSymbol? code)
    {
        double? side = plan.Portion.Pictograms == 0 ? null : stock.Frames.Count > 0 ? stock.Frames.Min(f => f.SideMm) : plan.PictogramSideMm;
        var xHeight = plan.StatementMm * LabelFont.Of(Face.Regular).XHeightEm;
        var demands = content.Demands;
        var notes = content.Notes.ToList();
        if (side < demands.UsualPictogramSideMm)
        {
            notes.Add(Line($"pictograms have sides of {side:0.#} mm; {demands.UsualPictogramSideMm:0.#} mm is usual where there is room"));
        }

        if (demands.XHeightSource is { } asks && plan.Portion.Hazards + plan.Portion.Precautions > 0 && xHeight < demands.UsualXHeightMm - 0.001)
        {
            notes.Add(Line($"statements have an x-height of {xHeight:0.0#} mm; {demands.UsualXHeightMm:0.0#} mm is asked of labels by {asks}"));
        }

        if (LabelSize.Shortfall(demands, stock) is { Required: false } small)
        {
            notes.Add(small.What);
        }

        return new LabelFit
        {
            Design = design.Name,
            Drawing = new Drawing(stock.PrintWidthMm, stock.PrintHeightMm, items),
            PictogramSideMm = side,
            StatementXHeightMm = xHeight,
            Code = code,
            LeftOff = [.. Portions.LeftOff(content, design, plan.Portion, code), .. Sizes(content, stock, plan.Portion, side)],
            Notes = notes,
        };
    }

    /// <summary>Sizes that the law asks and this label has not.</summary>
    private static IEnumerable<LeftOff> Sizes(LabelContent content, LabelStock stock, Portion portion, double? side)
    {
        var least = content.Demands.PictogramSideMm;
        if (side < least - 0.001)
        {
            yield return new LeftOff(
                Line($"pictograms with sides of {least:0.#} mm ({content.Demands.Source}); at {side:0.#} mm they are marks for a workplace label, which the label says"),
                Required: true);
        }

        if (side is not null && stock.Frames.Count == 0 && content.Demands is { Frame: Rules.FrameStyle.Black, BlackFramesAllowed: false })
        {
            yield return new LeftOff("red frames around the pictograms, which the label says", Required: true, ForRoom: false);
        }

        if (portion.Hazards + portion.Precautions + portion.Pictograms > 0 && LabelSize.Shortfall(content.Demands, stock) is { Required: true } small)
        {
            yield return small;
        }
    }

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
