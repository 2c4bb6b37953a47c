using Stockroom.Assessment.Neighbours;

namespace Stockroom.Assessment.Arrangement.Words;

/// <summary>What a plan does near things that nobody may touch.</summary>
internal static class HandsOffReason
{
    public static IEnumerable<Untouched> All(Scene scene)
    {
        for (var i = 0; i < scene.Plan.Things; i++)
        {
            if (scene.Thing(i).HandsOff is { } reason)
                yield return Of(scene, i, reason);
        }
    }

    private static Untouched Of(Scene scene, int thing, string reason)
    {
        var it = scene.Thing(thing);
        var home = scene.Plan.Home[thing];
        if (home < 0)
            return new Untouched(it.Key, $"{reason}. It has no place, and none is proposed: nobody may touch it.", 0);
        var stand = scene.Spot(home).Stand;
        bool IsNear(int spot) => spot >= 0 && Nearness.SharesCabinet(stand, scene.Spot(spot).Stand);
        var near = scene.Proposal.Steps.Where(s => IsNear(s.From) || IsNear(s.To)).ToList();
        var where = scene.Spot(home).Name;
        var around = near.Count == 0
            ? "No move begins or ends in its cabinet."
            : $"{(near.Count == 1 ? "One move begins or ends" : $"{near.Count} moves begin or end")} in its cabinet, of {Lists.Few(near.Select(s => scene.Thing(s.Thing).ToString()))}: get help with it first.";
        return new Untouched(it.Key, $"{Lists.Start(reason)}. {Lists.Start(it.Label)} stays on {where}: do not move, open or weigh it. {around}", near.Count);
    }
}
