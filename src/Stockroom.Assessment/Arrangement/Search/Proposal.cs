using Stockroom.Assessment.Neighbours;

namespace Stockroom.Assessment.Arrangement.Search;

/// <summary>A placement with an order of steps that leads to it.</summary>
/// <param name="Layout">The shelving in numbers, as given.</param>
/// <param name="At">Of each thing: its spot in the end, or <see cref="Layout.Nowhere"/> where it is left.</param>
/// <param name="Steps">The moves in order.</param>
/// <param name="Stuck">Things left only because no order brings them to a safe spot.</param>
/// <param name="IsProven">True where nothing can be better in what is left and moved.</param>
internal sealed record Proposal(Layout Layout, int[] At, IReadOnlyList<OrderedStep> Steps, IReadOnlySet<int> Stuck, bool IsProven);

/// <summary>Makes a proposal: first fit, then the search, then an order; never worse than first fit.</summary>
internal static class Proposer
{
    private const long PolishSteps = 50_000;

    public static Proposal Make(Shelving shelving, PairJudge judge, PlaceFit fit, Effort effort, IProgress<ArrangementProgress>? progress, CancellationToken cancel)
    {
        var layout = new Layout(shelving, judge, fit);
        var plain = FirstFit.Of(layout);
        var plainSteps = plain.Order.Select(i => new OrderedStep(i, layout.Home[i], plain.Placement.At[i], false)).ToList();
        var cover = HomeCover.Of(layout);
        var goal = new Score(cover.LeastLeft, cover.LeastMoved, int.MaxValue);
        var stuck = new HashSet<int>();
        long spent = 0;
        while (true)
        {
            var (at, score, steps) = Search(layout, plain.Placement, cover, goal, effort.Steps - spent, stuck, progress, cancel);
            spent += steps;
            if (score > Score.Of(plain.Placement))
                break;
            var (order, stopped) = MoveOrder.Of(layout, at);
            if (stopped.Count == 0)
                return new Proposal(layout, at, order, stuck, score.Left == goal.Left && score.Moved == goal.Moved);

            // What cannot be brought to its spot stays, and the rest is thought over once more.
            var first = stopped.OrderBy(i => shelving.Things[i].Key, StringComparer.Ordinal).First();
            stuck.Add(first);
            layout.Stays[first] = true;
        }

        foreach (var i in stuck)
            layout.Stays[i] = shelving.Things[i].Stays;
        return new Proposal(layout, plain.Placement.Copy(), plainSteps, new HashSet<int>(), IsProven: false);
    }

    private static (int[] At, Score Score, long Steps) Search(
        Layout layout, Placement plain, HomeCover cover, Score goal, long steps, IReadOnlySet<int> stuck, IProgress<ArrangementProgress>? progress, CancellationToken cancel)
    {
        var start = stuck.Count == 0 ? plain : FirstFit.Of(layout).Placement;
        var fromFirstFit = start.Copy();
        var placement = new Placement(layout);
        placement.Take(fromFirstFit);
        var search = new TabuSearch(placement);
        foreach (var i in cover.Leaving.Where(i => !layout.Stays[i]))
            SendAway(placement, i);
        bool IsEnough(Score s) => s.Left <= goal.Left && s.Moved <= goal.Moved;
        search.Run(Math.Max(steps, PolishSteps), IsEnough, progress, cancel);
        search.Run(search.Steps + PolishSteps, _ => search.Best.Moved == 0, progress, cancel);
        placement.Take(search.BestAt);
        Polish.Improve(placement);
        return (placement.Copy(), Score.Of(placement), search.Steps);
    }

    private static void SendAway(Placement placement, int thing)
    {
        var offered = placement.Layout.Offered[placement.Layout.Group[thing]];
        if (offered.Length > 0)
            placement.Put(thing, offered.MinBy(q => (1000 * placement.ClashesIf(thing, q)) + placement.Layout.Unease(thing, q)));
    }
}
