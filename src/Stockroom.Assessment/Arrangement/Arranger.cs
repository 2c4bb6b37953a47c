using Stockroom.Assessment.Arrangement.Checking;
using Stockroom.Assessment.Arrangement.Search;
using Stockroom.Assessment.Arrangement.Words;
using Stockroom.Assessment.Neighbours;

namespace Stockroom.Assessment.Arrangement;

/// <summary>
/// Proposes where everything should stand: leaving as few as can be without a safe place, then moving as few as can be,
/// then by what suits. Pure and deterministic.
/// </summary>
public static class Arranger
{
    /// <summary>A plan for a shelving; every plan has passed the checker.</summary>
    /// <param name="shelving">What stands where, and what could.</param>
    /// <param name="effort">How much work the search may do; <see cref="Effort.Usual"/> if not said.</param>
    /// <param name="judge">Judges the pairs; a new one if not given.</param>
    /// <param name="fit">Which places suit what; the program's own if not given.</param>
    /// <param name="progress">Told now and then how far the search is.</param>
    /// <param name="cancel">Stops the search.</param>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public static Plan Propose(
        Shelving shelving, Effort? effort = null, PairJudge? judge = null, PlaceFit? fit = null, IProgress<ArrangementProgress>? progress = null, CancellationToken cancel = default)
    {
        var judged = judge ?? new PairJudge();
        var fits = fit ?? PlaceFit.Default;
        var proposal = Proposer.Make(shelving, judged, fits, effort ?? Effort.Usual, progress, cancel);
        var plan = PlanWriter.Write(proposal, judged, fits);
        var mistakes = PlanChecker.Check(shelving, plan, judged, fits);
        return mistakes.Count == 0 ? plan : throw new InvalidOperationException($"the plan does not hold: {mistakes[0]}");
    }

    /// <summary>What first fit would do, as a yardstick: the number left, and the number moved.</summary>
    public static (int Left, int Moved) FirstFit(Shelving shelving, PairJudge? judge = null)
    {
        var placement = Search.FirstFit.Of(new Layout(shelving, judge ?? new PairJudge(), PlaceFit.Default)).Placement;
        return (placement.LeftCount, placement.MovedCount);
    }

    /// <summary>What no plan can better: the fewest left, and the fewest moved by a plan that leaves no more. From the clashes as things stand alone.</summary>
    public static (int Left, int Moved) Floor(Shelving shelving, PairJudge? judge = null)
    {
        var cover = HomeCover.Of(new Layout(shelving, judge ?? new PairJudge(), PlaceFit.Default));
        return (cover.LeastLeft, cover.LeastMoved);
    }
}
