using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Raoult's law: the partial pressure over an ideal mixture is the mole fraction times the vapour pressure of the pure part.
/// Source: Atkins, Physical Chemistry, 10th ed., section 5A. Within a factor of 2 in strongly non-ideal mixtures.
/// Worked example: half benzene by moles at 25 degrees C, pure 12.7 kPa: 6.35 kPa.
/// </summary>
public static class RaoultLaw
{
    public static readonly Spread NonIdeal = Spread.Of(2);

    public static Pressure Partial(Fraction mole, Pressure pure) => pure * mole.Value;
}
