using Stockroom.Labels.Codes;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Layout;

/// <summary>The identity corner: the code at the top right, the id under it in figures a person can read.</summary>
internal static class CodeBlock
{
    private const double LargestIdMm = 5;

    /// <summary>Share of the height that the id's figures have on large cards.</summary>
    private const double IdOfHeight = 0.035;

    /// <summary>White between the corner and the text that runs past it.</summary>
    private const double ClearMm = 1;

    /// <summary>False where the corner does not hold them.</summary>
    public static bool Place(FlowArea flow, LabelContent content, QrSymbol? code, double paddingMm)
    {
        var font = LabelFont.Of(Face.Bold);
        var idEm = font.WidthMm(content.Id, 1);
        double left, right, top;
        if (code is null)
        {
            (right, top) = (flow.Area.Right, flow.Area.Top);
            left = right - (flow.Area.Width * 0.3);
        }
        else
        {
            // The quiet zone may lie in the label's padding, which is white as well: the modules then align with the text.
            var quiet = QrSymbol.QuietModules * code.ModuleMm;
            var outside = Math.Min(quiet, paddingMm);
            var corner = new Position(flow.Area.Right - code.EdgeMm + outside, flow.Area.Top - outside);
            flow.Add(() => code.Draw(corner));
            flow.KeepClearAtRight(Box.FromEdges(corner.X - Math.Max(0, ClearMm - quiet), 0, flow.Area.Right, corner.Y + code.EdgeMm));
            (left, right, top) = (corner.X + quiet, corner.X + code.EdgeMm - quiet, corner.Y + code.EdgeMm);
        }

        var idSize = Math.Max(Legibility.SmallestTypeMm, Math.Min(Math.Max(LargestIdMm, flow.Area.Height * IdOfHeight), (right - left) / idEm));
        var height = idSize * FlowArea.LineSpacing;
        var x = right - (idEm * idSize);
        var baseline = new Position(x, top + (height / 2) + (idSize * font.CapHeightEm / 2));
        flow.Add(() => new TextRun(content.Id, Face.Bold, idSize, baseline));
        flow.KeepClearAtRight(Box.FromEdges(x - ClearMm, top, flow.Area.Right, top + height + (ClearMm / 2)));
        return Math.Min(left, x) >= flow.Area.Left - 0.001 && top + height <= flow.Area.Bottom + 0.001;
    }
}
