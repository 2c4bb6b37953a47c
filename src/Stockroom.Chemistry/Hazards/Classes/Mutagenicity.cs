namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Germ cell mutagenicity, CLP Annex I 3.5, Table 3.5.2.</summary>
public sealed class Mutagenicity : CutOffClass
{
    public override string Name => "Germ cell mutagenicity";

    public override IReadOnlyList<string> Categories { get; } = ["Muta. 1A", "Muta. 1B", "Muta. 2"];
}
