using Stockroom.Chemistry.Catalogue;
namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Oxidising gases, CLP Annex I 2.4.</summary>
public sealed class OxidisingGases : TestedClass
{
    public override string Name => "Oxidizing gases";

    public override IReadOnlyList<string> Categories { get; } = ["Ox. Gas 1"];

    protected override string Prefix => "Ox. Gas";

    protected override MatterState? OnlyFor => MatterState.Gas;
}
