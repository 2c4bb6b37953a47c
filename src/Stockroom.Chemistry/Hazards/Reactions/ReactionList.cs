namespace Stockroom.Chemistry.Hazards.Reactions;

/// <summary>The one list of computed reactions, in the order in which they run: the strongest base first.</summary>
internal static class ReactionList
{
    public static IReadOnlyList<IReaction> All { get; } =
    [
        new AcidWithHydroxide(),
        new AcidWithAmmonia(),
        new AcidWithCarbonate(),
        new AcidWithHydrogencarbonate(),
        new IodineWithThiosulfate(),
    ];
}
