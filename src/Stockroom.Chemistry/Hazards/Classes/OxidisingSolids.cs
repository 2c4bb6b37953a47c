using Stockroom.Chemistry.Catalogue;
namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Oxidising solids, CLP Annex I 2.14.</summary>
public sealed class OxidisingSolids : TestedClass
{
    public override string Name => "Oxidizing solids";

    public override IReadOnlyList<string> Categories { get; } = ["Ox. Sol. 1", "Ox. Sol. 2", "Ox. Sol. 3"];

    protected override string Prefix => "Ox. Sol.";

    protected override MatterState? OnlyFor => MatterState.Solid;
}
