using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses.Paths;

/// <summary>
/// Strength that a content loses by itself: hypochlorite by second order with the ionic strength, peroxide by first order. The
/// mass stays but for the oxygen.
/// </summary>
public sealed class Decomposition : ILossPath
{
    // Hypochlorite as sold holds at least some 0.2 mol/L of lye and other salts beside its own chloride, stated or not.
    private const double LeastSalts = 200;

    public string Name => "decomposition";

    public PathLoss Assess(LossState state)
    {
        if (state.Content.IsUnknown)
            return PathLoss.Unknown("what the content is, is not known");
        var leaves = new List<Leaving>();
        DecompositionLaw? first = null;
        foreach (var part in state.Content.Parts)
        {
            if (state.Facts.Decomposition(part.Substance) is not { } law || part.Substance.MolarMass is not { } molarMass)
                continue;
            first ??= law;
            var mass = state.Amount.Kilograms * (double)part.Percent / 100;
            var c = Concentration(state.Content, part, state.Density, molarMass);
            var relative = StrengthLaw.Of(law, c, OtherSalts(state.Content, part, state.Density), state.Temperature);
            leaves.Add(new Leaving(part.Substance, Band.Around(new MassRate(mass * relative.PerSecond), law.Spread)));
        }

        return first is null
            ? PathLoss.Absent("no rate law of its decomposition is in the tables")
            : PathLoss.Of(PathRole.Strength, leaves, () => $"{first.Substance.Name} decomposes by itself; {first.Provenance.Locator}", first.Provenance);
    }

    internal static MolarConcentration Concentration(Content content, Part part, Density density, MolarMass molarMass) =>
        new(density.KilogramsPerCubicMetre * (double)part.Percent / 100 / molarMass.KilogramsPerMole);

    /// <summary>Salts beside the decomposing part, each taken as two single-charged ions: its concentration is its ionic strength.</summary>
    internal static MolarConcentration OtherSalts(Content content, Part part, Density density) =>
        new(Math.Max(LeastSalts, content.Parts
            .Where(p => p != part && p.Substance.State == MatterState.Solid && p.Substance.MolarMass is not null)
            .Sum(p => Concentration(content, p, density, p.Substance.MolarMass!.Value).MolesPerCubicMetre)));
}
