using Stockroom.Chemistry.Catalogue;
namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Oxidising liquids, CLP Annex I 2.13; nitric and perchloric acid and hydrogen peroxide by the limits of their entries.</summary>
public sealed class OxidisingLiquids : TestedClass
{
    public override string Name => "Oxidizing liquids";

    public override IReadOnlyList<string> Categories { get; } = ["Ox. Liq. 1", "Ox. Liq. 2", "Ox. Liq. 3"];

    protected override string Prefix => "Ox. Liq.";

    protected override MatterState? OnlyFor => MatterState.Liquid;
}
