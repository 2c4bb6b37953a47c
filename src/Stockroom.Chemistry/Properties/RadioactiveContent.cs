using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// What decays in an amount of a content. What was made is taken as free of daughters on the day it was filled, but for those of the same
/// element; a mineral as it came from the ground (ores.tsv) holds every daughter in equilibrium with the head of its chain.
/// </summary>
public sealed class RadioactiveContent
{
    // Long against every daughter of uranium and thorium (uranium-234: 245,500 years), short against the heads of the chains.
    private static readonly Span Age = Span.FromYears(1e7);

    private readonly List<(DecayChain Chain, AmountOfSubstance Atoms, Span Age)> _chains = [];

    private RadioactiveContent()
    {
    }

    public static RadioactiveContent Of(Content content, Mass mass, PropertyFacts facts)
    {
        var found = new RadioactiveContent();
        foreach (var part in content.Parts)
        {
            var shares = facts.Nuclides(part.Substance);
            var isOre = facts.IsOre(part.Substance);
            foreach (var share in shares)
            {
                if (isOre && shares.Any(s => s.Nuclide != share.Nuclide && facts.DecayChain(s.Nuclide).Members.Contains(share.Nuclide)))
                    continue;
                var atoms = mass.Kilograms * (double)part.Percent / 100 * share.MassShare.Value / share.Nuclide.MolarMass.KilogramsPerMole;
                var age = isOre ? Age : new Span(0);
                found._chains.Add((facts.DecayChain(share.Nuclide), new AmountOfSubstance(atoms * Math.Exp(share.Nuclide.DecayConstant.PerSecond * age.Seconds)), age));
            }
        }

        return found;
    }

    /// <summary>True where nothing listed decays in it.</summary>
    public bool IsEmpty => _chains.Count == 0;

    /// <summary>Activity of every nuclide after a time, by its name.</summary>
    public IReadOnlyDictionary<string, (Nuclide Nuclide, Activity Activity)> After(Span elapsed)
    {
        var all = new Dictionary<string, (Nuclide Nuclide, Activity Activity)>(StringComparer.Ordinal);
        foreach (var (chain, atoms, age) in _chains)
        {
            foreach (var member in chain.After(age + elapsed))
            {
                var before = all.GetValueOrDefault(member.Nuclide.Name).Activity;
                all[member.Nuclide.Name] = (member.Nuclide, before + member.ActivityFrom(atoms));
            }
        }

        return all;
    }

    /// <summary>Helium that its alpha rays make in a time.</summary>
    public AmountOfSubstance HeliumUntil(Span elapsed)
    {
        var moles = 0.0;
        foreach (var (chain, atoms, age) in _chains)
        {
            moles += age.Seconds > 0
                ? chain.After(age).Sum(m => m.ActivityFrom(atoms).Becquerels * m.Nuclide.AlphasPerDecay.Value) * elapsed.Seconds / PhysicalConstants.Avogadro
                : atoms.Moles * chain.AlphasUntil(elapsed).Value;
        }

        return new AmountOfSubstance(moles);
    }
}
