using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Losses.Paths;

/// <summary>
/// Ionic solids without a listed vapour pressure: salts of the alkali and alkaline-earth metals, radium among them, and of silver have none that could
/// be measured near room temperature. Source: common practice. Other solids stay unknown.
/// </summary>
internal static class Involatile
{
    private static readonly string[] Ionic = ["Li", "Na", "K", "Rb", "Cs", "Mg", "Ca", "Sr", "Ba", "Ra", "Ag"];

    /// <summary>Null where the content is not such a solid.</summary>
    public static string? Reason(LossState state) =>
        state.Content.Pure is { State: MatterState.Solid } pure && IsIonic(pure)
            ? $"{pure.Name} is an ionic solid without a measurable vapour pressure (a hydrate may lose water in dry air)"
            : null;

    /// <summary>True for a salt of such a metal, also where it is known in solution only.</summary>
    public static bool IsIonic(Substance part) => part.Formula is { Atoms.Count: > 1 } formula && Ionic.Any(formula.Contains);
}
