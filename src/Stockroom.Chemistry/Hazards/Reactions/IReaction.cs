namespace Stockroom.Chemistry.Hazards.Reactions;

/// <summary>One kind of reaction between ingredients that is computed: a file of its own, listed in <see cref="ReactionList"/>.</summary>
internal interface IReaction
{
    /// <summary>Lets what can react do so to the end, and says it.</summary>
    void Run(Vessel vessel, IonTable ions);
}
