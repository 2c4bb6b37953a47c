using Stockroom.Labels.Designs;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>Sizes to try together; the codes largest first.</summary>
internal sealed record PlanSize(double PictogramSideMm, double StatementMm, double[] CodeEdgesMm);

/// <summary>The plans for a label in order of preference: sizes between the design's largest and the smallest that rules and eyes allow.</summary>
internal sealed class Plans
{
    /// <summary>Edges at which a code with its quiet zone holds, at three dots a module, about 80 characters, 45, and an id (ISO/IEC 18004 versions 5, 4, 1).</summary>
    private const double EdgeForWordsMm = 17;

    private const double EdgeForSomeWordsMm = 15.5;

    private const double EdgeForIdMm = 11;

    private const int TogetherSteps = 12;

    private readonly LabelContent _content;
    private readonly LabelStock _stock;
    private readonly DesignSizes _sizes;
    private readonly Portion _portion;
    private readonly double _width;
    private readonly double _height;
    private readonly double _leastType;
    private readonly double _leastSide;

    public Plans(LabelContent content, LabelStock stock, Design design, Portion portion)
    {
        (_content, _stock, _sizes, _portion) = (content, stock, design.Sizes, portion);
        (_width, _height) = (stock.PrintWidthMm - (2 * stock.PaddingMm), stock.PrintHeightMm - (2 * stock.PaddingMm));
        _leastType = Math.Max(Legibility.SmallestTypeMm, content.Demands.XHeightMm / LabelFont.Of(Face.Regular).XHeightEm);
        _leastSide = portion.Marks ? _sizes.Pictograms.LeastMm : Math.Max(_sizes.Pictograms.LeastMm, content.Demands.PictogramSideMm);
    }

    /// <summary>The plans with everything as small as it may be.</summary>
    public IEnumerable<Plan> Tightest() => Of(new PlanSize(_leastSide, _leastType, []), CodeEdges()[^1]);

    /// <summary>All arrangements at one size.</summary>
    public IEnumerable<Plan> Of(PlanSize size, double codeEdge)
    {
        var (side, type, _) = size;
        var details = _content.HasHazards ? _sizes.Details : _sizes.DetailsAlone;
        foreach (var runIn in Enum.GetValues<RunIn>())
        {
            foreach (var (arrangement, cluster) in Shapes(_portion.Pictograms, _stock.PrintHeightMm > _stock.PrintWidthMm))
            {
                yield return new Plan
                {
                    PictogramSideMm = side,
                    StatementMm = type,
                    DetailMm = Math.Clamp(type * 0.95, Legibility.SmallestTypeMm, Math.Max(Legibility.SmallestTypeMm, details.At(_width, _height))),
                    CodeEdgeMm = codeEdge,
                    Cluster = cluster,
                    Arrangement = arrangement,
                    RunIn = runIn,
                    Portion = _portion,
                };
            }
        }
    }

    /// <summary>Largest first, down to one that holds an id.</summary>
    private double[] CodeEdges()
    {
        var code = _sizes.Code;
        var largest = Math.Clamp(Math.Min(Math.Max(_height * code.OfHeight, EdgeForSomeWordsMm), _width * code.OfWidth), EdgeForIdMm, Math.Max(EdgeForIdMm, code.MostMm));
        largest = Math.Min(largest, Math.Max(EdgeForIdMm, _stock.MostCodeMm));
        return [largest, .. new[] { EdgeForWordsMm, EdgeForSomeWordsMm, EdgeForIdMm }.Where(e => e < largest)];
    }

    /// <summary>
    /// Pictograms and type shrink together to their usual sizes, then the pictograms to the smallest, then the type to the smallest.
    /// </summary>
    public IEnumerable<PlanSize> Sizes()
    {
        var edges = CodeEdges();
        foreach (var (side, type) in Shrinking())
        {
            // The code gives way only once the pictograms and the type are small.
            var tight = type <= UsualType + 0.001 && (_portion.Pictograms == 0 || side <= _leastSide + 0.001);
            yield return new PlanSize(side, type, tight ? edges : [edges[0]]);
        }
    }

    private double UsualType => Math.Max(_leastType, _content.Demands.UsualXHeightMm / LabelFont.Of(Face.Regular).XHeightEm);

    private IEnumerable<(double Side, double Type)> Shrinking()
    {
        var largestType = Math.Max(UsualType, _sizes.Statements.At(_width, _height));
        var largestSide = Math.Max(_leastSide, _sizes.Pictograms.At(_width, _height));
        if (_portion.Marks)
        {
            largestSide = Math.Max(_leastSide, Math.Min(largestSide, _content.Demands.PictogramSideMm));
        }

        var usualSide = Math.Clamp(_content.Demands.UsualPictogramSideMm, _leastSide, largestSide);
        for (var step = 0; step <= TogetherSteps; step++)
        {
            var share = step / (double)TogetherSteps;
            yield return (largestSide + ((usualSide - largestSide) * share), largestType + ((UsualType - largestType) * share));
        }

        if (_portion.Pictograms > 0)
        {
            for (var side = usualSide - 1; side > _leastSide; side--)
            {
                yield return (side, UsualType);
            }

            yield return (_leastSide, UsualType);
        }

        for (var type = UsualType * 0.95; type > _leastType; type *= 0.95)
        {
            yield return (_leastSide, type);
        }

        yield return (_leastSide, _leastType);
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
