using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Losses.Paths;

/// <summary>
/// Solids without a listed vapour pressure that have none one could measure near room temperature: salts of the alkali and alkaline-earth
/// metals, radium among them, and of silver; oxides, hydroxides and salts of oxygen acids of other metals and of silicon. Source: common practice. Other
/// solids stay unknown, halides above all: those of aluminium, zirconium or mercury(II) sublime.
/// </summary>
internal static class Involatile
{
    private static readonly string[] Ionic = ["Li", "Na", "K", "Rb", "Cs", "Mg", "Ca", "Sr", "Ba", "Ra", "Ag"];

    /// <summary>Not here: Os, Ru, Re, Tc, Se and As, whose oxides are volatile; Hg and Au, whose oxides give the metal.</summary>
    private static readonly HashSet<string> LatticeMetals = new(
        ["Be", "Al", "Ga", "In", "Ti", "Zr", "Hf", "V", "Nb", "Ta", "Cr", "Mo", "W", "Mn", "Fe", "Co", "Ni", "Cu", "Zn", "Cd", "Sn", "Pb", "Bi", "Sc", "Y", "La", "Ce", "Pr",
            "Nd", "Sm", "Eu", "Gd", "Tb", "Dy", "Ho", "Er", "Tm", "Yb", "Lu", "Th", "Pa", "U", "Np", "Pu", "Am", "Si"],
        StringComparer.Ordinal);

    private static readonly HashSet<string> OxygenAcids = new(["O", "H", "S", "N", "P", "B"], StringComparer.Ordinal);

    /// <summary>Null where the content is not such a solid.</summary>
    public static string? Reason(LossState state) => state.Content.Pure is not { State: MatterState.Solid } pure ? null
        : IsIonic(pure) ? $"{pure.Name} is an ionic solid without a measurable vapour pressure (a hydrate may lose water in dry air)"
        : IsOxide(pure) ? $"{pure.Name} is an oxide, or a salt of an oxygen acid, without a measurable vapour pressure (a hydrate may lose water in dry air)"
        : null;

    /// <summary>True for a salt of such a metal, also where it is known in solution only.</summary>
    public static bool IsIonic(Substance part) => part.Formula is { Atoms.Count: > 1 } formula && Ionic.Any(formula.Contains);

    // With carbon it may be a carbonyl or a chelate; a carbonate has three oxygens to its carbon and nothing else.
    private static bool IsOxide(Substance part) => part.Formula is { } formula && formula.Contains("O") && formula.Atoms.Keys.Any(LatticeMetals.Contains)
        && formula.Atoms.All(a => LatticeMetals.Contains(a.Key) || OxygenAcids.Contains(a.Key) || (a.Key == "C" && formula.Atoms["O"] >= 3 * a.Value && !formula.Contains("H")));
}
