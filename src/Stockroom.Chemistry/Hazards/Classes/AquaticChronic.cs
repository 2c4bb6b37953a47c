namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Long-term aquatic hazard, CLP Annex I 4.1: sums from the most severe category down (Table 4.1.2).</summary>
public sealed class AquaticChronic : AquaticClass
{
    public override string Name => "Hazardous to the aquatic environment, long-term (chronic)";

    public override IReadOnlyList<string> Categories { get; } = ["Aquatic Chronic 1", "Aquatic Chronic 2", "Aquatic Chronic 3", "Aquatic Chronic 4"];

    /// <summary>An older entry prints one factor, for the acute hazard; the chronic one is then taken as the same, to the safe side.</summary>
    protected override decimal? FactorOf(Ingredient ingredient) => ingredient.Profile.ChronicFactor ?? ingredient.Profile.AcuteFactor;

    protected override bool CountsFactor(string target) => target != "Aquatic Chronic 4";
}
