namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Self-heating substances and mixtures, CLP Annex I 2.11, from published entries.</summary>
public sealed class SelfHeating : TestedClass
{
    public override string Name => "Self-heating substances and mixtures";

    public override IReadOnlyList<string> Categories { get; } = ["Self-heat. 1", "Self-heat. 2"];

    protected override string Prefix => "Self-heat.";
}
