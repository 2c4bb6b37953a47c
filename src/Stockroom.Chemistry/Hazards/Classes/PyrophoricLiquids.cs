using Stockroom.Chemistry.Catalogue;
namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Pyrophoric liquids, CLP Annex I 2.9.</summary>
public sealed class PyrophoricLiquids : TestedClass
{
    public override string Name => "Pyrophoric liquids";

    public override IReadOnlyList<string> Categories { get; } = ["Pyr. Liq. 1"];

    protected override string Prefix => "Pyr. Liq.";

    protected override MatterState? OnlyFor => MatterState.Liquid;
}
