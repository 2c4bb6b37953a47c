namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Substances that give flammable gases with water, CLP Annex I 2.12.</summary>
public sealed class WaterReactives : TestedClass
{
    public override string Name => "Substances and mixtures which, in contact with water, emit flammable gases";

    public override IReadOnlyList<string> Categories { get; } = ["Water-react. 1", "Water-react. 2", "Water-react. 3"];

    protected override string Prefix => "Water-react.";
}
