using Stockroom.Assessment.Arrangement.Search;
using Stockroom.Assessment.Arrangement.Words;
using Stockroom.Assessment.Neighbours;

namespace Stockroom.Assessment.Arrangement;

/// <summary>A place for one container, and why it would do or not.</summary>
/// <param name="Spot">Where.</param>
/// <param name="IsSafe">True where nothing stands against it as things stand now.</param>
/// <param name="IsHere">True where it stands there now.</param>
/// <param name="Because">In a sentence.</param>
public sealed record PlaceFor(Spot Spot, bool IsSafe, bool IsHere, string Because);

/// <summary>The places for one container if nothing else is moved, best first.</summary>
public static class GoodPlaces
{
    /// <summary>Every place it could be sent to: first the safe ones, by what suits it; then the others, those with fewest against it first.</summary>
    /// <param name="shelving">What stands where.</param>
    /// <param name="thing">A thing of the shelving, or one that is not in it yet.</param>
    /// <param name="judge">Judges the pairs; a new one if not given.</param>
    /// <param name="fit">Which places suit what; the program's own if not given.</param>
    public static IReadOnlyList<PlaceFor> Of(Shelving shelving, Thing thing, PairJudge? judge = null, PlaceFit? fit = null)
    {
        var judged = judge ?? new PairJudge();
        var fits = fit ?? PlaceFit.Default;
        List<Thing> things = [.. shelving.Things.Where(t => t.Key != thing.Key), thing];
        var layout = new Layout(shelving with { Things = things }, judged, fits);
        var scene = new Scene(new Proposal(layout, [.. layout.Home], [], new HashSet<int>(), IsProven: false), judged);
        var placement = new Placement(layout);
        var it = things.Count - 1;
        return [.. Enumerable.Range(0, layout.Spots)
            .Where(q => shelving.Spots[q].IsOffered || q == layout.Home[it])
            .Select(q => (Spot: q, Against: scene.Before(it, q), Fit: fits.Of(thing, shelving.Spots[q]), Full: LimitWords.WouldPass(layout, it, q, layout.Home)))
            .OrderBy(p => p.Against.Count + (p.Full is null ? 0 : 1) + (Forbids(p.Fit, layout.Home[it] == p.Spot) ? 1 : 0))
            .ThenBy(p => Polish.Points(placement, it, p.Spot))
            .ThenBy(p => p.Spot)
            .Select(p => Told(scene, it, p.Spot, p.Against, p.Fit, p.Full))];
    }

    private static bool Forbids(Fit fit, bool isHere) => isHere ? fit.MustLeave : !fit.IsOffered;

    private static PlaceFor Told(Scene scene, int thing, int spot, IReadOnlyList<Discord> against, Fit fit, string? full)
    {
        var isHere = scene.Plan.Home[thing] == spot;
        var place = scene.Spot(spot);
        if (against.Count > 0)
            return new PlaceFor(place, false, isHere, DiscordSentence.Of(scene.Thing(thing).Label, "", against));
        if (full is not null)
            return new PlaceFor(place, false, isHere, $"{Lists.Start(full)}.");
        if (Forbids(fit, isHere))
            return new PlaceFor(place, false, isHere, $"{Lists.Start(fit.Because!)}.");
        var beside = MoveReason.Kin(scene, thing, spot) is { } kin ? $" It stands beside {kin}." : "";
        var suits = fit.Because is null ? "" : fit.Rank == 0 ? $"; {fit.Because}" : $", though {fit.Because}";
        var around = scene.Plan.NearHandsOff[spot] ? " Something that nobody may touch stands in that cabinet." : "";
        return new PlaceFor(place, true, isHere, $"{(isHere ? "It stands here now, and nothing" : "Nothing")} stands against it{suits}.{beside}{around}");
    }
}
