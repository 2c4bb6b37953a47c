namespace Stockroom.Chemistry.Hazards.Reactions;

/// <summary>H+ + NH3 -> NH4+: an ammonium salt, and nothing beside it but heat.</summary>
internal sealed class AcidWithAmmonia : Neutralisation
{
    protected override IonKind Base => IonKind.Ammonia;

    protected override string Consequence => "with heat and white fumes";

    protected override void Beside(Vessel vessel, decimal equivalents)
    {
        // The whole ammonia is in the salt.
    }
}
