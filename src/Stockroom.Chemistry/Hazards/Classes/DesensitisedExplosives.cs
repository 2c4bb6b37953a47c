namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Desensitised explosives, CLP Annex I 2.17: by test of the wetted form, so only where it is given.</summary>
public sealed class DesensitisedExplosives : TestedClass
{
    public override string Name => "Desensitized explosives";

    public override IReadOnlyList<string> Categories { get; } = ["Desen. Expl. 1", "Desen. Expl. 2", "Desen. Expl. 3", "Desen. Expl. 4"];

    protected override string Prefix => "Desen. Expl.";
}
