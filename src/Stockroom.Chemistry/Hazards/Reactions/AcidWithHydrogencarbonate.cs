namespace Stockroom.Chemistry.Hazards.Reactions;

/// <summary>H+ + HCO3- -> H2O + CO2: the gas leaves.</summary>
internal sealed class AcidWithHydrogencarbonate : Neutralisation
{
    protected override IonKind Base => IonKind.Hydrogencarbonate;

    protected override string Consequence => "water and carbon dioxide, which leaves as a gas (never close the vessel before it has ended)";

    protected override void Beside(Vessel vessel, decimal equivalents) => vessel.Give(vessel.Catalogue["water"], equivalents);
}
