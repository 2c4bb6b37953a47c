using Stockroom.Labels.Fonts;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>The plans for a label in order of preference.</summary>
internal static class Plans
{
    public static IEnumerable<Plan> For(LabelContent content, LabelStock stock, Portion portion)
    {
        var (width, height) = (stock.LabelWidthMm - (2 * stock.PaddingMm), stock.LabelHeightMm - (2 * stock.PaddingMm));
        var generous = Math.Clamp(Math.Min(height * 0.38, width * 0.28), 11, 32);
        var frugal = Math.Min(generous, 17);
        var pictograms = portion.Pictograms > 0;
        foreach (var (side, type) in Sizes(height, pictograms))
        {
            var tight = type <= UsualTypeMm + 0.001 && (!pictograms || side <= LabelDesign.SmallestPictogramSideMm + 0.001);
            foreach (var edge in tight && frugal < generous ? new[] { generous, frugal } : [generous])
            {
                foreach (var runIn in Enum.GetValues<RunIn>())
                {
                    foreach (var (arrangement, cluster) in Shapes(portion.Pictograms))
                    {
                        yield return new Plan
                        {
                            PictogramSideMm = side,
                            StatementMm = type,
                            DetailMm = Math.Clamp(type * 0.95, LabelDesign.SmallestTypeMm, 3.2),
                            CodeEdgeMm = edge,
                            Cluster = cluster,
                            Arrangement = arrangement,
                            RunIn = runIn,
                            Portion = portion,
                        };
                    }
                }
            }
        }
    }

    private static double UsualTypeMm { get; } = LabelDesign.UsualXHeightMm / LabelFont.Of(Face.Regular).XHeightEm;

    /// <summary>Type shrinks to the usual size first, then the pictograms to the smallest, then the type to the smallest.</summary>
    private static IEnumerable<(double Side, double Type)> Sizes(double height, bool pictograms)
    {
        var largest = Math.Clamp(height * 0.05, UsualTypeMm, 4.2);
        var side = pictograms ? Math.Clamp(height * 0.28, LabelDesign.SmallestPictogramSideMm, 32) : LabelDesign.SmallestPictogramSideMm;
        for (; side > LabelDesign.UsualPictogramSideMm; side *= 0.9)
        {
            for (var type = largest; type > UsualTypeMm; type *= 0.93)
            {
                yield return (side, type);
            }
        }

        side = Math.Min(side, LabelDesign.UsualPictogramSideMm);
        for (var type = largest; type > UsualTypeMm; type *= 0.93)
        {
            yield return (side, type);
        }

        for (; side > LabelDesign.SmallestPictogramSideMm; side -= 1)
        {
            yield return (side, UsualTypeMm);
        }

        for (var type = UsualTypeMm; type > LabelDesign.SmallestTypeMm; type *= 0.95)
        {
            yield return (LabelDesign.SmallestPictogramSideMm, type);
        }

        yield return (LabelDesign.SmallestPictogramSideMm, LabelDesign.SmallestTypeMm);
    }

    private static IEnumerable<(Arrangement Arrangement, Cluster Cluster)> Shapes(int pictograms)
    {
        Cluster[] clusters = pictograms switch
        {
            <= 1 => [Cluster.Row],
            2 => [Cluster.Row, Cluster.Stack, Cluster.Quilt],
            _ => [Cluster.Row, Cluster.Quilt, Cluster.Plait, Cluster.Stack],
        };
        if (pictograms == 0)
        {
            return [(Arrangement.Below, Cluster.Row)];
        }

        return Enum.GetValues<Arrangement>().SelectMany(a => clusters.Select(c => (a, c)));
    }
}
