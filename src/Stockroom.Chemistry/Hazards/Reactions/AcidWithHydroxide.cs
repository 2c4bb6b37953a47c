namespace Stockroom.Chemistry.Hazards.Reactions;

/// <summary>H+ + OH- -> H2O: one water for each equivalent, and its heat.</summary>
internal sealed class AcidWithHydroxide : Neutralisation
{
    /// <summary>Heat of neutralisation of strong acids and bases at 25 degrees Celsius (CRC Handbook, from memory: -55.8 kJ/mol).</summary>
    public const decimal KilojoulesPerMole = 55.8m;

    protected override IonKind Base => IonKind.Hydroxide;

    protected override string Consequence => "water and heat";

    protected override void Beside(Vessel vessel, decimal equivalents)
    {
        vessel.Give(vessel.Catalogue["water"], equivalents);
        vessel.Kilojoules += equivalents * KilojoulesPerMole;
    }
}
