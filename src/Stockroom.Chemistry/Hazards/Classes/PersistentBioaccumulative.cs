namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Persistent, bioaccumulative and toxic, or very persistent and very bioaccumulative, CLP Annex I 4.3; only CLP has it.</summary>
public sealed class PersistentBioaccumulative : CutOffClass
{
    public override string Name => "PBT/vPvB properties";

    public override IReadOnlyList<string> Categories { get; } = ["vPvB", "PBT"];

    protected override string Lane(string category) => category;
}
