using Stockroom.Labels.Designs;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>Sets one label on one stock by any plan, all of it or not at all.</summary>
internal sealed class Composer(LabelContent content, LabelStock stock, Design design)
{
    /// <summary>White around a frame that the stock comes with.</summary>
    private const double FrameGapMm = 0.8;

    private readonly Dictionary<(double CodeEdge, double Detail, Portion Portion), FlowArea?> _frames = [];

    /// <summary>The label, not yet drawn, or null where it does not fit.</summary>
    public FlowArea? Compose(Plan plan)
    {
        // Code, name and particulars are the same for all plans that differ in the hazards only.
        var key = (plan.CodeEdgeMm, plan.DetailMm, plan.Portion);
        if (!_frames.TryGetValue(key, out var frame))
        {
            _frames[key] = frame = Frame(plan);
        }

        if (frame is null)
        {
            return null;
        }

        if (!content.HasHazards && content.Remark(plan.Portion) is null)
        {
            return frame;
        }

        var flow = frame.Copy();
        var gap = Gap(flow);
        flow.Y += gap;
        return HazardBlock.Place(flow, content, plan, stock, gap) ? flow : null;
    }

    private FlowArea? Frame(Plan plan)
    {
        var flow = new FlowArea(new Box(0, 0, stock.PrintWidthMm, stock.PrintHeightMm).Inset(stock.PaddingMm));
        foreach (var frame in stock.Frames)
        {
            flow.KeepClear(frame.Box.Inset(-FrameGapMm));
        }

        return CodeBlock.Place(flow, content, content.CodeFor(plan.CodeEdgeMm), stock.PaddingMm)
            && DetailsBlock.Place(flow, content, design, plan.Portion, plan.DetailMm, Gap(flow))
            && new HeaderBlock(flow, content, design, stock.PaddingMm, plan.Portion).Place()
                ? flow
                : null;
    }

    private static double Gap(FlowArea flow) => Math.Clamp(flow.Area.Height * 0.035, 0.6, 3);
}
