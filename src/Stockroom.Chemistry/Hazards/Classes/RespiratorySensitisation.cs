namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Respiratory sensitisation, CLP Annex I 3.4, Table 3.4.5.</summary>
public sealed class RespiratorySensitisation : CutOffClass
{
    public override string Name => "Respiratory sensitization";

    public override IReadOnlyList<string> Categories { get; } = ["Resp. Sens. 1A", "Resp. Sens. 1", "Resp. Sens. 1B"];
}
