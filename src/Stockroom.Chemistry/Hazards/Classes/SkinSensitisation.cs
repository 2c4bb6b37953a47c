namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Skin sensitisation, CLP Annex I 3.4, Table 3.4.5.</summary>
public sealed class SkinSensitisation : CutOffClass
{
    public override string Name => "Skin sensitization";

    public override IReadOnlyList<string> Categories { get; } = ["Skin Sens. 1A", "Skin Sens. 1", "Skin Sens. 1B"];
}
