using Stockroom.Assessment.Arrangement.Search;

namespace Stockroom.Assessment.Arrangement.Words;

/// <summary>Why a thing finds no safe place.</summary>
internal sealed class LeftReason(Scene scene, PlaceFit fit)
{
    public string Of(int thing)
    {
        var it = scene.Thing(thing);
        var home = scene.Plan.Home[thing];
        var now = home < 0 ? $"{Lists.Start(it.Label)} has no place yet." : Now(thing, home, it.Label);
        if (it.HandsOff is { } untouchable)
            return $"{now} Nobody may touch it ({untouchable}).";
        if (it.Pinned is { } pinned)
            return $"{now} It is pinned where it stands ({pinned}).";
        if (scene.Proposal.Stuck.Contains(thing))
            return $"{now} No order of moves brings it to a safe place without making something worse on the way; one free place more would allow it.";
        return $"{now} {Nearest(thing)}";
    }

    private string Now(int thing, int home, string label)
    {
        var unfit = fit.Of(scene.Thing(thing), scene.Spot(home));
        var mustNot = unfit.MustLeave ? $"{Lists.Start(label)} must not stand on {scene.Spot(home).Name}: {unfit.Because}." : null;
        var discords = scene.After(thing, home);
        if (discords.Count == 0)
            discords = scene.Before(thing, home);
        if (discords.Count > 0)
            return DiscordSentence.Of(label, scene.Spot(home).Name, discords);
        return mustNot ?? LimitWords.Passed(scene.Plan, home) ?? $"{Lists.Start(label)} stands in the way.";
    }

    // The place at which fewest stand against it, and who.
    private string Nearest(int thing)
    {
        var offered = scene.Plan.Offered[scene.Plan.Group[thing]];
        if (offered.Length == 0)
            return "No place that there is suits it.";
        var nearest = offered
            .Select(q => (Spot: q, Against: scene.After(thing, q), Full: LimitWords.WouldPass(scene.Plan, thing, q, scene.End)))
            .OrderBy(n => n.Against.Count + (n.Full is null ? 0 : 1))
            .ThenBy(n => scene.Plan.Unease(thing, n.Spot))
            .ThenBy(n => n.Spot)
            .First();
        var why = nearest.Against.Count > 0
            ? $"{Lists.Few(nearest.Against.Select(d => d.Other.Label))} would stand against it ({DiscordSentence.Worst(nearest.Against).Cause})"
            : nearest.Full ?? "what it needs is taken";
        return $"No place that suits it is free of what it must not stand near; the nearest to safe is {scene.Spot(nearest.Spot).Name}, where {why}.";
    }
}
