using Stockroom.Labels.Drawings;
using Stockroom.Labels.Pictograms;
using Stockroom.Labels.Rules;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>Pictograms, signal word and statements.</summary>
internal static class HazardBlock
{
    /// <summary>A column of text narrower than this many ems is no longer read at ease.</summary>
    private const double NarrowestColumnEm = 9;

    public static bool Place(FlowArea flow, LabelContent content, Plan plan, LabelStock stock, double gap)
    {
        var beside = plan.Arrangement != Arrangement.Below;
        if (stock.Frames.Count > 0)
        {
            PreprintedFrames.Fill(flow, content.Pictograms, stock.Frames);
        }
        else if (plan.Portion.Pictograms > 0 && !Cluster(flow, content, plan, gap, beside))
        {
            return false;
        }

        var least = NarrowestColumnEm * plan.StatementMm;
        var hazards = content.Some(content.Hazards, plan.Portion.Hazards, plan.RunIn == RunIn.All);
        var precautions = content.Some(content.Precautions, plan.Portion.Precautions, plan.RunIn != RunIn.None);
        if ((plan.Portion.Signal && !Signal(flow, content.Signal, plan.StatementMm)) || !Statements(flow, hazards, plan.StatementMm, least))
        {
            return false;
        }

        if (plan.Arrangement == Arrangement.Split)
        {
            flow.ReleaseLeft();
            flow.Y = Math.Max(flow.Y, flow.LeftBottom);
        }

        if (precautions.Count > 0)
        {
            flow.Y += gap * 0.5;
        }

        return Statements(flow, precautions, plan.StatementMm, least)
            && (content.Remark(plan.Portion) is not { } remark || flow.Set(remark, plan.StatementMm));
    }

    private static bool Cluster(FlowArea flow, LabelContent content, Plan plan, double gap, bool beside)
    {
        var cluster = PictogramCluster.Of(plan.Portion.Pictograms, plan.PictogramSideMm, plan.Cluster);
        var top = flow.Y;
        while (flow.Free(top, cluster.HeightMm).To < flow.Area.Left + cluster.WidthMm)
        {
            var below = flow.NextEdgeBelow(top);
            if (below is null)
            {
                return false;
            }

            top = below.Value;
        }

        if (top + cluster.HeightMm > flow.Bottom + 0.001)
        {
            return false;
        }

        var ink = content.Demands.Frame == FrameStyle.Black ? Ink.Black : Ink.Red;
        var codes = PictogramChoice.Worst(content.Pictograms, plan.Portion.Pictograms);
        for (var i = 0; i < codes.Count; i++)
        {
            var (code, corner) = (codes[i], cluster.Corners[i].Offset(flow.Area.Left, top));
            flow.Add(() => Pictogram.Draw(code, plan.PictogramSideMm, corner, ink));
        }

        var box = new Box(flow.Area.Left, top, cluster.WidthMm + gap, cluster.HeightMm + (gap * 0.5));
        if (beside)
        {
            flow.HoldLeft(box);
            flow.Y = top;
            return true;
        }

        flow.Y = box.Bottom;
        return true;
    }

    private static bool Signal(FlowArea flow, Paragraph signal, double statementMm)
    {
        if (signal.IsEmpty)
        {
            return true;
        }

        var size = Math.Min(statementMm * 2.1, flow.Area.Height * 0.16);
        size = Math.Max(size, statementMm);
        return flow.Set(signal, size, mostLines: 1, leastWidthMm: signal.WidthEm * size);
    }

    private static bool Statements(FlowArea flow, IReadOnlyList<Paragraph> statements, double size, double least) =>
        statements.All(s => flow.Set(s, size, leastWidthMm: Math.Max(least, s.LongestPieceEm * size)));
}
