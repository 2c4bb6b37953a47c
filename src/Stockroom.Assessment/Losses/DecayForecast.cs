using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// What decay has made of a content by a day: activity of every member of its chains, and the helium of its alpha rays since it was filled
/// (see <see cref="RadioactiveContent"/> for what was in it then).
/// </summary>
/// <remarks>Members: most active first. Helium: made since then, all of it, most of which stays in a dense solid.</remarks>
public sealed record DecayForecast(DateOnly Since, IReadOnlyList<(Nuclide Nuclide, Activity Activity)> Members, AmountOfSubstance Helium)
{
    private const double Mentioned = 1e-6;

    /// <summary>True for a mineral, which held its daughters when it came.</summary>
    public bool InEquilibrium { get; init; }

    public Activity Total => new(Members.Sum(m => m.Activity.Becquerels));

    /// <summary>Null where nothing in the content is radioactive.</summary>
    public static DecayForecast? Of(Situation situation, PropertyFacts facts, DateOnly on)
    {
        var since = situation.Filled ?? situation.AmountOn;
        var elapsed = Span.FromDays(Math.Max(0, on.DayNumber - since.DayNumber));
        var content = RadioactiveContent.Of(situation.Content, situation.Amount, facts);
        if (content.IsEmpty)
            return null;
        var activities = content.After(elapsed);
        var most = activities.Values.Max(a => a.Activity.Becquerels);
        return new DecayForecast(
            since,
            [.. activities.Values.Where(a => a.Activity.Becquerels > Mentioned * most).OrderByDescending(a => a.Activity)],
            content.HeliumUntil(elapsed))
        {
            InEquilibrium = situation.Content.Parts.Any(p => facts.IsOre(p.Substance)),
        };
    }
}
