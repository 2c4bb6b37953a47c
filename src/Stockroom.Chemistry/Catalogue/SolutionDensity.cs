using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Catalogue;

/// <summary>
/// Density of a solution in water: linear between the stocked strengths of the same solute, water's below the first.
/// Good to about 2 per cent between stocked strengths.
/// </summary>
internal static class SolutionDensity
{
    private const double WaterGramsPerMillilitre = 0.998;

    /// <summary>Null where no stocked strength of the solute is at or above the one asked for.</summary>
    public static Density? Interpolated(SubstanceCatalogue catalogue, Substance solute, decimal percent)
    {
        var points = catalogue.Preparations
            .Where(p => p.Parts.Count == 2 && p.WaterPercent > 0 && p.Density is not null && p.PercentOf(solute.Name) > 0)
            .Select(p => (Percent: (double)p.PercentOf(solute.Name), Value: p.Density!.Value.GramsPerMillilitre))
            .OrderBy(p => p.Percent)
            .ToList();
        var below = (Percent: 0.0, Value: WaterGramsPerMillilitre);
        foreach (var point in points)
        {
            if ((double)percent <= point.Percent)
            {
                var share = ((double)percent - below.Percent) / (point.Percent - below.Percent);
                return Density.FromGramsPerMillilitre(below.Value + (share * (point.Value - below.Value)));
            }

            below = point;
        }

        return null;
    }

    /// <summary>Per cent by mass of a molarity, by fixed-point iteration on the density.</summary>
    public static (decimal Percent, Density? Density) PercentOfMolar(
        SubstanceCatalogue catalogue, Substance solute, decimal molesPerLitre, MolarMass molarMass, List<string> notes)
    {
        var gramsPerLitre = molesPerLitre * (decimal)molarMass.GramsPerMole;
        var density = Density.FromGramsPerMillilitre(1.0);
        var known = false;
        var percent = 0m;
        for (var i = 0; i < 20; i++)
        {
            percent = decimal.Round(gramsPerLitre / ((decimal)density.GramsPerMillilitre * 10m), 4);
            if (Interpolated(catalogue, solute, percent) is not { } next)
                break;
            known = true;
            density = next;
        }

        if (!known)
            notes.Add($"density of the {solute.Name} solution is not known; 1.00 g/mL was used to turn {molesPerLitre} mol/L into {percent:0.##} % by mass");
        return (percent, known ? density : null);
    }
}
