namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Chemicals under pressure, GHS chapter 2.3 from Rev. 8 on; not in CLP.</summary>
public sealed class ChemicalsUnderPressure : TestedClass
{
    public override string Name => "Chemicals under pressure";

    public override IReadOnlyList<string> Categories { get; } = ["Chem. under Press. 1", "Chem. under Press. 2", "Chem. under Press. 3"];

    protected override string Prefix => "Chem. under Press.";
}
