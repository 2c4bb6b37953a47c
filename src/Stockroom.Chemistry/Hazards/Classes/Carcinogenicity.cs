namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Carcinogenicity, CLP Annex I 3.6, Table 3.6.2.</summary>
public sealed class Carcinogenicity : CutOffClass
{
    public override string Name => "Carcinogenicity";

    public override IReadOnlyList<string> Categories { get; } = ["Carc. 1A", "Carc. 1B", "Carc. 2"];
}
