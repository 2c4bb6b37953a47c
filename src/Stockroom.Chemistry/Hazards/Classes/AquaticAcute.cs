namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Short-term aquatic hazard, CLP Annex I 4.1: sum of M times share (Table 4.1.1); the GHS has categories 2 and 3 too.</summary>
public sealed class AquaticAcute : AquaticClass
{
    public override string Name => "Hazardous to the aquatic environment, short-term (acute)";

    public override IReadOnlyList<string> Categories { get; } = ["Aquatic Acute 1", "Aquatic Acute 2", "Aquatic Acute 3"];

    protected override decimal? FactorOf(Ingredient ingredient) => ingredient.Profile.AcuteFactor;
}
