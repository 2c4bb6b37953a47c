namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Persistent, mobile and toxic, or very persistent and very mobile, CLP Annex I 4.4; only CLP has it.</summary>
public sealed class PersistentMobile : CutOffClass
{
    public override string Name => "PMT/vPvM properties";

    public override IReadOnlyList<string> Categories { get; } = ["vPvM", "PMT"];

    protected override string Lane(string category) => category;
}
