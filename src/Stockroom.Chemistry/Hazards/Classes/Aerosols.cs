namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Aerosols, CLP Annex I 2.3: a property of the dispenser, so only where it is given.</summary>
public sealed class Aerosols : TestedClass
{
    public override string Name => "Aerosols";

    public override IReadOnlyList<string> Categories { get; } = ["Aerosol 1", "Aerosol 2", "Aerosol 3"];

    protected override string Prefix => "Aerosol";
}
