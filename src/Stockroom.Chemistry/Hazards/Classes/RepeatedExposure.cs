namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Specific target organ toxicity by repeated exposure, CLP Annex I 3.9, Table 3.9.4.</summary>
public sealed class RepeatedExposure : CutOffClass
{
    public override string Name => "STOT, repeated exposure";

    public override IReadOnlyList<string> Categories { get; } = ["STOT RE 1", "STOT RE 2"];
}
