using Stockroom.Labels.Drawings;
using Stockroom.Labels.Pictograms;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>Fills the red frames that a stock comes with: symbols in their order, and solid black in what is left over.</summary>
internal static class PreprintedFrames
{
    /// <summary>Solid black reaches this far over the frame, so that no red shows where the printer is a little off.</summary>
    private const double OverMm = 0.3;

    public static void Fill(FlowArea flow, IReadOnlyList<string> codes, IReadOnlyList<StockFrame> frames)
    {
        for (var i = 0; i < frames.Count; i++)
        {
            var frame = frames[i];
            var corner = new Position(frame.LeftMm, frame.TopMm);
            if (i < codes.Count)
            {
                var code = codes[i];
                flow.Add(() => Pictogram.Draw(code, frame.SideMm, corner, frame: null));
            }
            else
            {
                flow.Add(() => Blackened(frame));
            }
        }
    }

    /// <summary>Why the label cannot go on the stock; null where it can.</summary>
    public static string? Problem(LabelText text, LabelStock stock)
    {
        var (needed, there) = (text.Pictograms.Count, stock.Frames.Count);
        if (there == 0 || needed == there || (needed < there && needed > 0 && text.Demands.SpareFramesMayBeBlackened))
        {
            return null;
        }

        return $"{text.Id ?? "SAMPLE"} needs {needed} pictogram{(needed == 1 ? "" : "s")} and stock '{stock.Name}' comes with {there} red frame{(there == 1 ? "" : "s")}; "
            + (needed > there ? "all pictograms need a frame" : "no frame may stay empty");
    }

    private static Group Blackened(StockFrame frame)
    {
        var box = frame.Box.Inset(-OverMm);
        var path = new PathBuilder().Diamond(box.Left + (box.Width / 2), box.Top + (box.Height / 2), box.Width).Build();
        return new Group("spare frame", box, [new FilledPath(path, Ink.Black)]);
    }
}
