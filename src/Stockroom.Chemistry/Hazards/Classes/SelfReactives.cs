namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Self-reactive substances and mixtures, CLP Annex I 2.8.</summary>
public sealed class SelfReactives : TestedClass
{
    public override string Name => "Self-reactive substances and mixtures";

    public override IReadOnlyList<string> Categories { get; } = ["Self-react. A", "Self-react. B", "Self-react. C", "Self-react. D", "Self-react. E", "Self-react. F", "Self-react. G"];

    protected override string Prefix => "Self-react.";
}
