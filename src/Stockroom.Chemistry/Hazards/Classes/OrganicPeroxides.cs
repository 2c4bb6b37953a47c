namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Organic peroxides, CLP Annex I 2.15, from published entries.</summary>
public sealed class OrganicPeroxides : TestedClass
{
    public override string Name => "Organic peroxides";

    public override IReadOnlyList<string> Categories { get; } = ["Org. Perox. A", "Org. Perox. B", "Org. Perox. C", "Org. Perox. D", "Org. Perox. E", "Org. Perox. F", "Org. Perox. G"];

    protected override string Prefix => "Org. Perox.";
}
