namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Pyrophoric solids, CLP Annex I 2.10; carried over to a liquid too, because what dries from it ignites.</summary>
public sealed class PyrophoricSolids : TestedClass
{
    public override string Name => "Pyrophoric solids";

    public override IReadOnlyList<string> Categories { get; } = ["Pyr. Sol. 1"];

    protected override string Prefix => "Pyr. Sol.";
}
