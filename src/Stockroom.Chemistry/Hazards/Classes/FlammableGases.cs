using Stockroom.Chemistry.Catalogue;
namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Flammable gases, CLP Annex I 2.2; older entries still say category 1. A mixture of gases is not calculated by ISO 10156 here.</summary>
public sealed class FlammableGases : TestedClass
{
    public override string Name => "Flammable gases";

    public override IReadOnlyList<string> Categories { get; } = ["Flam. Gas 1A", "Pyr. Gas", "Chem. Unst. Gas A", "Chem. Unst. Gas B", "Flam. Gas 1", "Flam. Gas 1B", "Flam. Gas 2"];

    protected override string Prefix => "Flam. Gas";

    protected override MatterState? OnlyFor => MatterState.Gas;
}
