namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Endocrine disruption for human health, CLP Annex I 3.11; only CLP has it.</summary>
public sealed class EndocrineHuman : CutOffClass
{
    public override string Name => "Endocrine disruption for human health";

    public override IReadOnlyList<string> Categories { get; } = ["ED HH 1", "ED HH 2"];
}
