namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Corrosive to metals, CLP Annex I 2.16: by test, so only where an entry has it.</summary>
public sealed class CorrosiveToMetals : TestedClass
{
    public override string Name => "Corrosive to metals";

    public override IReadOnlyList<string> Categories { get; } = ["Met. Corr. 1"];

    protected override string Prefix => "Met. Corr.";
}
