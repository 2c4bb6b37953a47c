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
internal sealed class Proposer
{
    private const long PolishSteps = 50_000;
    private const int DetoursTried = 8;

    // Share of the effort that is spent on one thing without a gain: 30,000 steps of the usual effort.
    private const long PatienceShare = 400;

    private readonly Layout _layout;
    private readonly HomeCover _cover;
    private readonly Score _goal;
    private readonly IProgress<ArrangementProgress>? _progress;
    private readonly CancellationToken _cancel;
    private readonly HashSet<int> _stuck = [];
    private readonly long _patience;
    private long _steps;
    private Proposal _best;
    private Score _bestScore;

    private Proposer(Layout layout, long steps, IProgress<ArrangementProgress>? progress, CancellationToken cancel)
    {
        _layout = layout;
        _cover = HomeCover.Of(layout);
        _goal = new Score(_cover.LeastLeft, _cover.LeastMoved, int.MaxValue);
        _steps = steps;
        _patience = Math.Max(PolishSteps, steps / PatienceShare * layout.Things);
        (_progress, _cancel) = (progress, cancel);
        var (plain, order) = FirstFit.Of(layout);
        _bestScore = Score.Of(plain);
        _best = new Proposal(layout, plain.Copy(), [.. order.Select(i => new OrderedStep(i, layout.Home[i], plain.At[i], false))], new HashSet<int>(), IsGoal(_bestScore));
    }

    public static Proposal Make(Shelving shelving, PairJudge judge, PlaceFit fit, Effort effort, IProgress<ArrangementProgress>? progress, CancellationToken cancel)
    {
        var layout = new Layout(shelving, judge, fit);
        return new Proposer(layout, effort.Steps, progress, cancel).Run();
    }

    private bool IsGoal(Score score) => score.Left == _goal.Left && score.Moved == _goal.Moved;

    // What cannot be brought to its spot is sent elsewhere, a few times; then it stays, and the rest is thought over once more.
    private Proposal Run()
    {
        for (var round = 0; ; round++)
        {
            var (at, score) = Search();
            if (score > _bestScore)
                return _best;
            var (order, stopped) = MoveOrder.Of(_layout, at);
            if (stopped.Count == 0)
            {
                if (score < _bestScore)
                    (_best, _bestScore) = (new Proposal(_layout, at, order, _stuck.ToHashSet(), IsGoal(score)), score);
                return _best;
            }

            var worst = stopped[round % stopped.Count];
            if (round < DetoursTried)
                Bar(worst, at[worst]);
            else
                Keep(worst);
        }
    }

    private void Bar(int thing, int spot)
    {
        var stand = _layout.Shelving.Spots[spot].Stand;
        for (var q = 0; q < _layout.Spots; q++)
        {
            if (Nearness.SharesCabinet(stand, _layout.Shelving.Spots[q].Stand))
                _layout.Barred.Add((thing, q));
        }
    }

    private void Keep(int thing)
    {
        _stuck.Add(thing);
        _layout.Stays[thing] = true;
    }

    private (int[] At, Score Score) Search()
    {
        var placement = new Placement(_layout);
        if (_layout.Barred.Count == 0 && _stuck.Count == 0)
            placement.Take(_best.At);
        else
            FirstFit.LeaveWhatIsAtOdds(placement);
        var search = new TabuSearch(placement);
        foreach (var i in _cover.Leaving.Where(i => !_layout.Stays[i]))
            SendAway(placement, i);
        search.Run(Math.Max(_steps / 2, PolishSteps), _patience, _goal.Left, s => s.Left <= _goal.Left && s.Moved <= _goal.Moved, _progress, _cancel);
        search.Run(search.Steps + PolishSteps, PolishSteps, _goal.Left, _ => search.Best.Moved == 0, _progress, _cancel);
        _steps -= search.Steps;
        placement.Take(search.BestAt);
        Polish.Improve(placement);
        return (placement.Copy(), Score.Of(placement));
    }

    private void SendAway(Placement placement, int thing)
    {
        var offered = _layout.Offered[_layout.Group[thing]].Where(q => !_layout.Barred.Contains((thing, q))).ToList();
        if (offered.Count > 0)
            placement.Put(thing, offered.MinBy(q => (1000 * placement.ClashesIf(thing, q)) + _layout.Unease(thing, q)));
    }
}
