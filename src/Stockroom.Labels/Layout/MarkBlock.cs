using Stockroom.Labels.Codes;
using Stockroom.Labels.Designs;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Pictograms;
using Stockroom.Labels.Rules;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>Sets the smallest labels: pictograms as marks, id, warnings, signal word and name beside or above a code that holds the id alone.</summary>
internal sealed class MarkBlock(LabelContent content, LabelStock stock, Design design)
{
    private const double ClearMm = 0.6;
    private const double SizeStep = 0.94;

    /// <summary>Edges of versions 1 and 2 (ISO/IEC 18004), quiet zone included, and a hair more.</summary>
    private static readonly double[] CodeEdgesMm =
        [(29 * 4 * QrSymbol.DotMm) + 0.01, (33 * 3 * QrSymbol.DotMm) + 0.01, (29 * 3 * QrSymbol.DotMm) + 0.01];

    /// <summary>The richest mark that fits, and what it holds; null where not even the id does.</summary>
    public (FlowArea Flow, QrSymbol? Code, Portion Portion, double? Side)? Best()
    {
        foreach (var portion in Portions.Shrinking(content, design))
        {
            foreach (var way in Ways(portion))
            {
                if (Place(way) is { } mark)
                {
                    return (mark.Flow, mark.Code, way, mark.Side);
                }
            }
        }

        return null;
    }

    /// <summary>Where the code or the end of the name had to go for the sake of what has gone since, they may come back.</summary>
    private IEnumerable<Portion> Ways(Portion portion)
    {
        if (portion.NameLength > 0 && portion.NameLength < content.TitleText.Length)
        {
            yield return portion with { Code = true, NameLength = content.TitleText.Length };
        }

        if (!portion.Code)
        {
            yield return portion with { Code = true };
        }

        yield return portion;
    }

    private (FlowArea Flow, QrSymbol? Code, double? Side)? Place(Portion portion)
    {
        var area = new Box(0, 0, stock.PrintWidthMm, stock.PrintHeightMm).Inset(stock.PaddingMm);
        if (!portion.Code)
        {
            var bare = new FlowArea(area);
            return Filled(bare, portion, idLines: 2) is { } size ? (bare, null, size.Side) : null;
        }

        foreach (var code in IdAlone())
        {
            foreach (var place in design.CodeAt)
            {
                var flow = new FlowArea(area);
                if (Code(flow, code, place, stock.PaddingMm) && Filled(flow, portion, idLines: 1) is { } size)
                {
                    return (flow, code, size.Side);
                }
            }
        }

        return null;
    }

    /// <summary>Pictograms at the left or on top, largest first, and the words beside or below.</summary>
    private (double? Side, bool Done)? Filled(FlowArea flow, Portion portion, int idLines)
    {
        if (portion.Pictograms == 0)
        {
            return Words(flow, portion, idLines) ? (null, true) : null;
        }

        var sizes = design.Sizes.Pictograms;
        var codes = PictogramChoice.Worst(content.Pictograms, portion.Pictograms);
        for (var side = sizes.At(flow.Area.Width, flow.Area.Height); ; side = Math.Max(sizes.LeastMm, side - 0.5))
        {
            foreach (var (cluster, beside) in new[] { (Cluster.Stack, true), (Cluster.Row, true), (Cluster.Plait, true), (Cluster.Row, false), (Cluster.Quilt, false) })
            {
                var trial = flow.Copy();
                if (Pictograms(trial, codes, PictogramCluster.Of(codes.Count, side, cluster), side, beside) && Words(trial, portion, idLines))
                {
                    flow.TakeOver(trial);
                    return (side, true);
                }
            }

            if (side <= sizes.LeastMm)
            {
                return null;
            }
        }
    }

    private bool Pictograms(FlowArea flow, IReadOnlyList<string> codes, PictogramCluster cluster, double side, bool beside)
    {
        var (from, to) = flow.Free(flow.Y, cluster.HeightMm);
        if (from + cluster.WidthMm > to + 0.001 || flow.Y + cluster.HeightMm > flow.Bottom + 0.001)
        {
            return false;
        }

        var ink = content.Demands.Frame == FrameStyle.Black ? Ink.Black : Ink.Red;
        var top = flow.Y;
        for (var i = 0; i < codes.Count; i++)
        {
            var (code, corner) = (codes[i], cluster.Corners[i].Offset(from, top));
            flow.Add(() => Pictogram.Draw(code, side, corner, ink));
        }

        var box = new Box(from, top, cluster.WidthMm + ClearMm, cluster.HeightMm + ClearMm);
        if (beside)
        {
            flow.HoldLeft(box);
        }
        else
        {
            flow.Y = box.Bottom;
        }

        return true;
    }

    /// <summary>Codes with modules of four dots, if there is room, then of three.</summary>
    private IEnumerable<QrSymbol> IdAlone()
    {
        var most = Math.Min(stock.PrintWidthMm, Math.Min(stock.PrintHeightMm, stock.MostCodeMm));
        return CodeEdgesMm.Select(e => QrSymbol.Fit(content.CodeId, [], Math.Min(e, most))).OfType<QrSymbol>().DistinctBy(c => c.EdgeMm);
    }

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

    private bool Words(FlowArea flow, Portion portion, int idLines)
    {
        var id = new Paragraph(content.Id, Face.Bold);
        var words = new List<string>(content.Extra.Take(portion.Extra));
        if (portion.Signal && !content.Signal.IsEmpty)
        {
            words.Add(content.Signal.Text);
        }

        words.AddRange(content.MarkRemarks(portion));
        var name = portion.NameLength > 0 ? content.Name(portion.NameLength) : new Paragraph(string.Empty, Face.Regular);
        var (from, to) = flow.Free(flow.Y, flow.Bottom - flow.Y);
        for (var size = design.Sizes.Name.At(flow.Area.Width, flow.Area.Height); size >= Legibility.SmallestTypeMm; size = Next(size))
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

    private static double Next(double size) => size > Legibility.SmallestTypeMm && size * SizeStep < Legibility.SmallestTypeMm
        ? Legibility.SmallestTypeMm
        : size * SizeStep;
}
