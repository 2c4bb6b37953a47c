using Stockroom.Labels.Codes;
using Stockroom.Labels.Designs;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>A label whose every part is in its place.</summary>
internal sealed record Composition(Plan Plan, IReadOnlyList<DrawingItem> Items, QrSymbol? Code);

/// <summary>Sets one portion of one label on one stock.</summary>
internal sealed class Setting(LabelContent content, LabelStock stock, Design design, Portion portion)
{
    private readonly Composer _composer = new(content, stock, design);
    private readonly Plans _plans = new(content, stock, design, portion);

    private double RoomMm2 { get; } = (stock.PrintWidthMm - (2 * stock.PaddingMm)) * (stock.PrintHeightMm - stock.PaddingMm);

    /// <summary>With everything as small as it may be; null where that does not fit.</summary>
    public FlowArea? Tightest() => First(_plans.Tightest())?.Flow;

    /// <summary>With everything as large as fits; only where <see cref="Tightest"/> fits.</summary>
    public Composition Largest()
    {
        var sizes = _plans.Sizes().ToList();
        var (_, best) = Halving.First(sizes.Count, i => AtSize(sizes[i]));
        var (plan, flow) = best ?? throw new InvalidOperationException("the tightest plan is not among the sizes");
        return new Composition(plan, flow.Drawn(), content.CodeFor(plan.CodeEdgeMm));
    }

    private Set? AtSize(PlanSize size)
    {
        // Whether it fits at all is settled by the smallest code; then the largest that fits is taken.
        var edges = size.CodeEdgesMm;
        if (First(_plans.Of(size, edges[^1])) is not { } least)
        {
            return null;
        }

        return edges.SkipLast(1).Select(e => First(_plans.Of(size, e))).FirstOrDefault(s => s is not null) ?? least;
    }

    private Set? First(IEnumerable<Plan> plans)
    {
        foreach (var plan in plans)
        {
            if (content.LeastAreaMm2(plan, stock) <= RoomMm2 && _composer.Compose(plan) is { } flow)
            {
                return new Set(plan, flow);
            }
        }

        return null;
    }

    private sealed record Set(Plan Plan, FlowArea Flow);
}
