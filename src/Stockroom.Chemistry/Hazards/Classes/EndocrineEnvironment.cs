namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Endocrine disruption for the environment, CLP Annex I 4.2; only CLP has it.</summary>
public sealed class EndocrineEnvironment : CutOffClass
{
    public override string Name => "Endocrine disruption for the environment";

    public override IReadOnlyList<string> Categories { get; } = ["ED ENV 1", "ED ENV 2"];
}
