using Stockroom.Labels.Codes;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>Sets a label by one plan, all of it or not at all.</summary>
internal static class Composer
{
    public static (IReadOnlyList<DrawingItem> Items, QrSymbol? Code)? Compose(LabelContent content, LabelStock stock, Plan plan)
    {
        var label = new Box(0, 0, stock.LabelWidthMm, stock.LabelHeightMm);
        var flow = new FlowArea(label.Inset(stock.PaddingMm));
        var gap = Math.Clamp(flow.Area.Height * 0.035, 0.6, 3);
        var code = content.CodeFor(plan.CodeEdgeMm);
        CodeBlock.Place(flow, content, code, stock.PaddingMm);
        if (!DetailsBlock.Place(flow, content, plan, gap) || !HeaderBlock.Place(flow, content, stock.PaddingMm, plan.Portion))
        {
            return null;
        }

        if (!content.HasHazards && !content.IsShort(plan.Portion))
        {
            return (flow.Drawn(), code);
        }

        flow.Y += gap;
        return HazardBlock.Place(flow, content, plan, gap) ? (flow.Drawn(), code) : null;
    }
}
