using Stockroom.Chemistry.Catalogue;
namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Flammable solids, CLP Annex I 2.7.</summary>
public sealed class FlammableSolids : TestedClass
{
    public override string Name => "Flammable solids";

    public override IReadOnlyList<string> Categories { get; } = ["Flam. Sol. 1", "Flam. Sol. 2"];

    protected override string Prefix => "Flam. Sol.";

    protected override MatterState? OnlyFor => MatterState.Solid;
}
