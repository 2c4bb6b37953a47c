using Stockroom.Assessment.Arrangement.Search;

namespace Stockroom.Assessment.Arrangement.Words;

/// <summary>Why a thing is moved, and why to that place.</summary>
internal sealed class MoveReason(Scene scene, PlaceFit fit)
{
    public string Of(OrderedStep step)
    {
        if (step.IsParked)
            return $"{Lists.Start(scene.Thing(step.Thing).Label)} waits here until its own place, {PlaceOf(scene.End[step.Thing])}, is free: what stands there must leave first, and cannot while this stands in its way.";
        return $"{WhyLeave(step.Thing)} {WhyThere(step.Thing)}";
    }

    private string WhyLeave(int thing)
    {
        var home = scene.Plan.Home[thing];
        var label = scene.Thing(thing).Label;
        if (home < 0)
            return $"{Lists.Start(label)} has no place yet.";
        var unfit = fit.Of(scene.Thing(thing), scene.Spot(home));
        if (unfit.MustLeave)
            return $"{Lists.Start(label)} must not stand on {PlaceOf(home)}: {unfit.Because}.";
        var discords = scene.Before(thing, home);
        if (discords.Count > 0)
            return DiscordSentence.Of(label, scene.Spot(home).Name, discords);
        return LimitWords.Passed(scene.Plan, home) ?? MakesRoom(thing, home, label);
    }

    private string MakesRoom(int thing, int home, string label)
    {
        for (var k = 0; k < scene.Plan.Things; k++)
        {
            if (k == thing || !scene.IsMoved(k) || scene.Between(thing, home, k, scene.End[k]) is not { } discord)
                continue;
            return $"{Lists.Start(label)} makes room for {scene.Thing(k).Label}, which comes to {PlaceOf(scene.End[k])}: {discord.Cause}{discord.Would}.";
        }

        return $"{Lists.Start(label)} makes room on {PlaceOf(home)}, which can take no more.";
    }

    private string WhyThere(int thing)
    {
        var spot = scene.End[thing];
        var kin = Kin(scene, thing, spot);
        var beside = kin is null ? "" : $", and it is beside {kin}";
        var suits = fit.Of(scene.Thing(thing), scene.Spot(spot));
        var because = suits.Because is null ? "" : suits.Rank == 0 ? $"; {suits.Because}" : $", though {suits.Because}";
        return $"On {PlaceOf(spot)} nothing stands against it{beside}{because}.";
    }

    /// <summary>Something of the same or a like content that stands at the spot; null where nothing does.</summary>
    public static string? Kin(Scene scene, int thing, int spot)
    {
        return Enumerable.Range(0, scene.Plan.Things)
            .Where(j => j != thing && scene.End[j] == spot)
            .Select(j => (scene.Thing(j).Label, Shared: Polish.Likeness(scene.Thing(thing).Profile, scene.Thing(j).Profile), Same: scene.Plan.Group[j] == scene.Plan.Group[thing]))
            .Where(k => k.Same || k.Shared > 0)
            .OrderByDescending(k => k.Same)
            .ThenByDescending(k => k.Shared)
            .Select(k => k.Label)
            .FirstOrDefault();
    }

    private string PlaceOf(int spot) => scene.Spot(spot).Name;
}
