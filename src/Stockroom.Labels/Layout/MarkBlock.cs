using Stockroom.Labels.Codes;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>
/// The design of the smallest labels: id, warnings, signal word and name beside or above a code that holds the id alone.
/// </summary>
internal static class MarkBlock
{
    private const double ClearMm = 0.6;
    private const double LargestMm = 3.2;
    private const double SizeStep = 0.94;

    /// <summary>Most wanted first: the code gives way to the beginning of the name, but not to all of a long one.</summary>
    public static IEnumerable<(Portion Portion, bool WithCode)> Ways(LabelContent content)
    {
        var named = Portions.Mark(content).Where(p => p.NameLength > 0).ToList();
        var nameless = Portions.Mark(content).Where(p => p.NameLength == 0).ToList();
        return new[] { named, nameless }.SelectMany(g => new[] { true, false }.SelectMany(c => g.Select(p => (p, c))));
    }

    /// <summary>The mark, or null where the portion does not fit.</summary>
    public static (FlowArea Flow, QrSymbol? Code)? Place(LabelContent content, LabelStock stock, Portion portion, bool withCode)
    {
        var area = new Box(0, 0, stock.PrintWidthMm, stock.PrintHeightMm).Inset(stock.PaddingMm);
        if (!withCode)
        {
            var bare = new FlowArea(area);
            return Words(bare, content, portion, idLines: 2) ? (bare, null) : null;
        }

        foreach (var code in IdAlone(content, stock))
        {
            foreach (var place in new[] { CodePlace.Right, CodePlace.Bottom })
            {
                var flow = new FlowArea(area);
                if (Code(flow, code, place, stock.PaddingMm) && Words(flow, content, portion, idLines: 1))
                {
                    return (flow, code);
                }
            }
        }

        return null;
    }

    private enum CodePlace
    {
        Right,
        Bottom,
    }

    /// <summary>Codes with modules of four dots, if there is room, then of three.</summary>
    private static IEnumerable<QrSymbol> IdAlone(LabelContent content, LabelStock stock)
    {
        var most = Math.Min(stock.PrintWidthMm, Math.Min(stock.PrintHeightMm, stock.MostCodeMm));
        return CodeEdgesMm.Select(e => QrSymbol.Fit(content.CodeId, [], Math.Min(e, most))).OfType<QrSymbol>().DistinctBy(c => c.EdgeMm);
    }

    /// <summary>Edges of versions 1 and 2 (ISO/IEC 18004), quiet zone included, and a hair more.</summary>
    private static readonly double[] CodeEdgesMm =
        [(29 * 4 * QrSymbol.DotMm) + 0.01, (33 * 3 * QrSymbol.DotMm) + 0.01, (29 * 3 * QrSymbol.DotMm) + 0.01];

    /// <summary>The quiet zone may lie in the padding.</summary>
    private static bool Code(FlowArea flow, QrSymbol code, CodePlace place, double paddingMm)
    {
        var outside = Math.Min(QrSymbol.QuietModules * code.ModuleMm, paddingMm);
        var corner = place == CodePlace.Right
            ? new Position(flow.Area.Right + outside - code.EdgeMm, flow.Area.Top + ((flow.Area.Height - code.EdgeMm) / 2))
            : new Position(flow.Area.Left + ((flow.Area.Width - code.EdgeMm) / 2), flow.Area.Bottom + outside - code.EdgeMm);
        flow.Add(() => code.Draw(corner));
        if (place == CodePlace.Right)
        {
            flow.KeepClearAtRight(Box.FromEdges(corner.X, flow.Area.Top, flow.Area.Right, flow.Area.Bottom));
            return corner.X > flow.Area.Left + ClearMm;
        }

        flow.Bottom = corner.Y;
        return corner.Y > flow.Area.Top + ClearMm;
    }

    private static bool Words(FlowArea flow, LabelContent content, Portion portion, int idLines)
    {
        var id = new Paragraph(content.Id, Face.Bold);
        var words = new List<string>(content.Extra.Take(portion.Extra));
        if (portion.Signal && !content.Signal.IsEmpty)
        {
            words.Add(content.Signal.Text);
        }

        var name = portion.NameLength > 0 ? content.Name(portion.NameLength) : new Paragraph(string.Empty, Face.Regular);
        var (from, to) = flow.Free(flow.Y, flow.Bottom - flow.Y);
        for (var size = LargestMm; size >= LabelDesign.SmallestTypeMm; size = Next(size))
        {
            var trial = flow.Copy();
            if (Whole(id, size, to - from) && trial.Set(id, size, idLines)
                && Warnings(words, size, to - from).All(w => Whole(w, size, to - from) && trial.Set(w, size))
                && Whole(name, size, to - from) && trial.Set(name, size))
            {
                flow.TakeOver(trial);
                return true;
            }
        }

        return false;
    }

    /// <summary>On one line if they fit, or else a line for each.</summary>
    private static IEnumerable<Paragraph> Warnings(List<string> words, double size, double width)
    {
        var joined = new Paragraph(string.Join(" · ", words), Face.Bold);
        return joined.WidthEm * size <= width ? [joined] : words.Select(w => new Paragraph(w, Face.Bold));
    }

    /// <summary>No word is cut.</summary>
    private static bool Whole(Paragraph paragraph, double size, double width) => paragraph.LongestPieceEm * size <= width + 0.001;

    private static double Next(double size) => size > LabelDesign.SmallestTypeMm && size * SizeStep < LabelDesign.SmallestTypeMm
        ? LabelDesign.SmallestTypeMm
        : size * SizeStep;
}
