using Stockroom.Labels.Fonts;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>Sizes to try together; the codes largest first.</summary>
internal sealed record PlanSize(double PictogramSideMm, double StatementMm, double[] CodeEdgesMm);

/// <summary>The plans for a label in order of preference.</summary>
internal static class Plans
{
    /// <summary>The plans with everything as small as it may be.</summary>
    public static IEnumerable<Plan> Tightest(LabelContent content, LabelStock stock, Portion portion) =>
        Of(content, stock, portion, new PlanSize(LabelDesign.SmallestPictogramSideMm, LabelDesign.SmallestTypeMm, []), CodeEdges(stock)[^1]);

    /// <summary>All arrangements at one size.</summary>
    public static IEnumerable<Plan> Of(LabelContent content, LabelStock stock, Portion portion, PlanSize size, double codeEdge)
    {
        var (side, type, _) = size;
        foreach (var runIn in Enum.GetValues<RunIn>())
        {
            foreach (var (arrangement, cluster) in Shapes(portion.Pictograms, stock.PrintHeightMm > stock.PrintWidthMm))
            {
                yield return new Plan
                {
                    PictogramSideMm = side,
                    StatementMm = type,
                    DetailMm = Math.Clamp(type * 0.95, LabelDesign.SmallestTypeMm, content.HasHazards ? 3.2 : 4),
                    CodeEdgeMm = codeEdge,
                    Cluster = cluster,
                    Arrangement = arrangement,
                    RunIn = runIn,
                    Portion = portion,
                };
            }
        }
    }

    /// <summary>Largest first, down to one that holds an id.</summary>
    private static double[] CodeEdges(LabelStock stock)
    {
        var (width, height) = (stock.PrintWidthMm - (2 * stock.PaddingMm), stock.PrintHeightMm - (2 * stock.PaddingMm));
        var largest = Math.Clamp(Math.Min(Math.Max(height * 0.36, EdgeForSomeWordsMm), width * 0.3), EdgeForIdMm, 32);
        largest = Math.Min(largest, Math.Max(EdgeForIdMm, stock.MostCodeMm));
        return [largest, .. new[] { EdgeForWordsMm, EdgeForSomeWordsMm, EdgeForIdMm }.Where(e => e < largest)];
    }

    /// <summary>Edges at which a code with its quiet zone holds, at three dots a module, about 80 characters, 50, and an id (ISO/IEC 18004 versions 5, 3, 1).</summary>
    private const double EdgeForWordsMm = 17;

    private const double EdgeForSomeWordsMm = 14;

    private const double EdgeForIdMm = 11;

    private const int TogetherSteps = 12;

    private static double UsualTypeMm { get; } = LabelDesign.UsualXHeightMm / LabelFont.Of(Face.Regular).XHeightEm;

    /// <summary>
    /// Pictograms and type shrink together to their usual sizes, then the pictograms to the smallest, then the type to the smallest.
    /// </summary>
    public static IEnumerable<PlanSize> Sizes(LabelStock stock, Portion portion)
    {
        var edges = CodeEdges(stock);
        foreach (var (side, type) in Shrinking(stock, portion.Pictograms > 0))
        {
            // The code gives way only once the pictograms and the type are small.
            var tight = type <= UsualTypeMm + 0.001
                && (portion.Pictograms == 0 || side <= LabelDesign.SmallestPictogramSideMm + 0.001);
            yield return new PlanSize(side, type, tight ? edges : [edges[0]]);
        }
    }

    private static IEnumerable<(double Side, double Type)> Shrinking(LabelStock stock, bool pictograms)
    {
        var (width, height) = (stock.PrintWidthMm - (2 * stock.PaddingMm), stock.PrintHeightMm - (2 * stock.PaddingMm));
        var largestType = Math.Clamp(Math.Min(height * 0.05, width * 0.04), UsualTypeMm, 4.6);
        var largestSide = Math.Clamp(Math.Min(height * 0.28, width * 0.19), LabelDesign.SmallestPictogramSideMm, 32);
        var usualSide = Math.Min(LabelDesign.UsualPictogramSideMm, largestSide);
        for (var step = 0; step <= TogetherSteps; step++)
        {
            var share = step / (double)TogetherSteps;
            yield return (largestSide + ((usualSide - largestSide) * share), largestType + ((UsualTypeMm - largestType) * share));
        }

        if (pictograms)
        {
            for (var side = usualSide - 1; side > LabelDesign.SmallestPictogramSideMm; side--)
            {
                yield return (side, UsualTypeMm);
            }

            yield return (LabelDesign.SmallestPictogramSideMm, UsualTypeMm);
        }

        for (var type = UsualTypeMm * 0.95; type > LabelDesign.SmallestTypeMm; type *= 0.95)
        {
            yield return (LabelDesign.SmallestPictogramSideMm, type);
        }

        yield return (LabelDesign.SmallestPictogramSideMm, LabelDesign.SmallestTypeMm);
    }

    private static IEnumerable<(Arrangement Arrangement, Cluster Cluster)> Shapes(int pictograms, bool upright)
    {
        Cluster[] clusters = pictograms switch
        {
            <= 1 => [Cluster.Row],
            _ when upright => [Cluster.Stack, Cluster.Plait, Cluster.Row, Cluster.Quilt],
            _ => [Cluster.Row, Cluster.Quilt, Cluster.Plait, Cluster.Stack],
        };
        if (pictograms == 0)
        {
            return [(Arrangement.Below, Cluster.Row)];
        }

        return Enum.GetValues<Arrangement>().SelectMany(a => clusters.Select(c => (a, c)));
    }
}
