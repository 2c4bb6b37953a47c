using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// What decay has made of a content by a day: activity of every member of its chains, and the helium of its alpha rays. The content is
/// taken as free of daughters on the day it was filled.
/// </summary>
/// <remarks>Members: most active first. Helium: made since then, all of it, most of which stays in a dense solid.</remarks>
public sealed record DecayForecast(DateOnly Since, IReadOnlyList<(Nuclide Nuclide, Activity Activity)> Members, AmountOfSubstance Helium)
{
    private const double Mentioned = 1e-6;

    public Activity Total => new(Members.Sum(m => m.Activity.Becquerels));

    /// <summary>Null where nothing in the content is radioactive.</summary>
    public static DecayForecast? Of(Situation situation, PropertyFacts facts, DateOnly on)
    {
        var since = situation.Filled ?? situation.AmountOn;
        var elapsed = Span.FromDays(Math.Max(0, on.DayNumber - since.DayNumber));
        var (activities, helium) = (new Dictionary<string, (Nuclide Nuclide, double Becquerels)>(StringComparer.Ordinal), 0.0);
        foreach (var part in situation.Content.Parts)
        {
            foreach (var share in facts.Nuclides(part.Substance))
            {
                var mass = situation.Amount.Kilograms * (double)part.Percent / 100 * share.MassShare.Value;
                var atoms = new AmountOfSubstance(mass / share.Nuclide.MolarMass.KilogramsPerMole);
                var chain = facts.DecayChain(share.Nuclide);
                helium += atoms.Moles * chain.AlphasUntil(elapsed).Value;
                foreach (var member in chain.After(elapsed))
                {
                    var before = activities.GetValueOrDefault(member.Nuclide.Name).Becquerels;
                    activities[member.Nuclide.Name] = (member.Nuclide, before + member.ActivityFrom(atoms).Becquerels);
                }
            }
        }

        if (activities.Count == 0)
            return null;
        var most = activities.Values.Max(a => a.Becquerels);
        return new DecayForecast(
            since, [.. activities.Values.Where(a => a.Becquerels > Mentioned * most).OrderByDescending(a => a.Becquerels).Select(a => (a.Nuclide, new Activity(a.Becquerels)))], new AmountOfSubstance(helium));
    }
}
