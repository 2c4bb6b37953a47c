namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Reproductive toxicity, CLP Annex I 3.7, Table 3.7.2; effects by way of lactation stand beside the categories.</summary>
public sealed class ReproductiveToxicity : CutOffClass
{
    public override string Name => "Reproductive toxicity";

    public override IReadOnlyList<string> Categories { get; } = ["Repr. 1A", "Repr. 1B", "Repr. 2", "Lact."];

    protected override string Lane(string category) => category == "Lact." ? "lactation" : "";
}
