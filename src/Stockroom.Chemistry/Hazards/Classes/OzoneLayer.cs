namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Hazardous to the ozone layer, CLP Annex I part 5, Table 5.1.</summary>
public sealed class OzoneLayer : CutOffClass
{
    public override string Name => "Hazardous to the ozone layer";

    public override IReadOnlyList<string> Categories { get; } = ["Ozone 1"];
}
