namespace Stockroom.Chemistry.Hazards.Reactions;

/// <summary>2 H+ + CO3(2-) -> H2O + CO2: the gas leaves.</summary>
internal sealed class AcidWithCarbonate : Neutralisation
{
    protected override IonKind Base => IonKind.Carbonate;

    protected override string Consequence => "water and carbon dioxide, which leaves as a gas (never close the vessel before it has ended)";

    protected override void Beside(Vessel vessel, decimal equivalents) => vessel.Give(vessel.Catalogue["water"], equivalents / 2m);
}
