namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Explosives, CLP Annex I 2.1; the divisions of CLP and of the US rules.</summary>
public sealed class Explosives : TestedClass
{
    public override string Name => "Explosives";

    public override IReadOnlyList<string> Categories { get; } = ["Unst. Expl.", "Expl. 1.1", "Expl. 1.2", "Expl. 1.3", "Expl. 1.5", "Expl. 1.4", "Expl. 1.6"];

    protected override string Prefix => "Expl.";
}
