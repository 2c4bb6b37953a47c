using Stockroom.Assessment.Arrangement.Search;
using Stockroom.Assessment.Neighbours;

namespace Stockroom.Assessment.Arrangement.Words;

/// <summary>Puts a proposal into words.</summary>
internal static class PlanWriter
{
    public static Plan Write(Proposal proposal, PairJudge judge, PlaceFit fit)
    {
        var scene = new Scene(proposal, judge);
        var moves = new MoveReason(scene, fit);
        var left = new LeftReason(scene, fit);
        return new Plan
        {
            Moves = [.. proposal.Steps.Select(s => new Move(
                scene.Thing(s.Thing).Key, s.From < 0 ? null : scene.Spot(s.From).Id, scene.Spot(s.To).Id, moves.Of(s), s.IsParked))],
            Left = [.. Enumerable.Range(0, proposal.Layout.Things).Where(scene.IsLeft).Select(i => new Left(scene.Thing(i).Key, left.Of(i)))],
            HandsOff = [.. HandsOffReason.All(scene)],
            ExtraPlaces = new ExtraPlaces(scene, fit, judge).All(),
            Notes = [.. PlanNotes.Of(proposal.Layout.Shelving)],
            IsProven = proposal.IsProven,
        };
    }
}
