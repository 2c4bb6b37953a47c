using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>Which gases a content gives to the air: its loss split by what leaves, water and what only decays left out.</summary>
internal static class AirEmission
{
    // A tenth of a microgram a year: less is no vapour to speak of.
    private const double Negligible = 3e-18;

    /// <summary>Share of the loss that each gas makes up; empty where nothing nameable leaves.</summary>
    public static IReadOnlyList<(Substance Gas, double Share)> Of(Situation situation, PropertyFacts facts)
    {
        var network = LossNetwork.At(new LossState(situation, facts));
        var byGas = new Dictionary<Substance, double>();
        var total = 0.0;
        foreach (var path in network.Paths.Where(p => p.Finding.Role is not (PathRole.Strength or PathRole.Barrier) && p.Finding.Verdict == PathVerdict.Applies))
        {
            var unscaled = path.Finding.Leaves.Sum(l => l.Rate.Expected.KilogramsPerSecond);
            total += path.Rate.Expected.KilogramsPerSecond;
            if (unscaled <= 0 || path.Finding.Role == PathRole.Transmuted)
                continue;
            foreach (var leaving in path.Finding.Leaves)
            {
                var gas = leaving.Part.DissolvedFormOf is { } name ? facts.Catalogue[name] : leaving.Part;
                if (gas.Name != "water")
                    byGas[gas] = byGas.GetValueOrDefault(gas) + (leaving.Rate.Expected.KilogramsPerSecond / unscaled * path.Rate.Expected.KilogramsPerSecond);
            }
        }

        return total <= 0 ? [] : [.. byGas.Where(g => g.Value > Negligible).Select(g => (g.Key, g.Value / total))];
    }
}
