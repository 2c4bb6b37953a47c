namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>
/// Reproductive toxicity, CLP Annex I 3.7, Table 3.7.2; effects by way of lactation stand beside the categories. Boron
/// compounds are added up before the limit (Annex VI, Note 11).
/// </summary>
public sealed class ReproductiveToxicity : CutOffClass
{
    public override string Name => "Reproductive toxicity";

    public override IReadOnlyList<string> Categories { get; } = ["Repr. 1A", "Repr. 1B", "Repr. 2", "Lact."];

    protected override string Lane(string category) => category == "Lact." ? "lactation" : "";

    protected override decimal ShareOf(Ingredient ingredient, Mixture mixture) => ingredient.Profile.SummedAs is { } group
        ? mixture.Ingredients.Where(i => i.Profile.SummedAs == group).Sum(i => i.Counted)
        : ingredient.Counted;
}
