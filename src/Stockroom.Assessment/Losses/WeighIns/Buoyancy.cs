using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses.WeighIns;

/// <summary>
/// What the changing weight of the air does to a reading. Density of moist air by the simplified formula of OIML R 111-1 (2004), E.3:
/// (0.34848 p - 0.009 h exp(0.061 t))/(273.15 + t), p in hPa, h in per cent, t in degrees Celsius.
/// </summary>
internal static class Buoyancy
{
    /// <summary>Air for which balances and their masses are made: 1.2 kg/m3, masses of 8000 kg/m3 (OIML D 28).</summary>
    public static readonly Density Usual = new(1.2);

    private const double Masses = 8000;

    // One standard deviation of the air's density indoors, from weather and warmth, by what was read: from memory, weather of temperate coasts.
    private const double NothingRead = 0.03;
    private const double TemperatureRead = 0.015;
    private const double PressureRead = 0.02;
    private const double BothRead = 0.003;

    public static Density Air(Temperature t, Pressure p, Fraction humidity) =>
        new(((0.34848 * p.Pascals / 100) - (0.009 * humidity.Percent * Math.Exp(0.061 * t.Celsius))) / t.Kelvin);

    /// <summary>The reading as it would have been in usual air, and how far the air leaves it open.</summary>
    /// <param name="weighIn">As read.</param>
    /// <param name="outside">Outside volume of the vessel.</param>
    /// <param name="breathing">Room inside that may hold the air of the place: half of it is taken to, the other half stays open.</param>
    public static (Mass Reading, Mass Deviation) InUsualAir(WeighIn weighIn, Volume outside, Volume breathing)
    {
        var displaced = outside.CubicMetres - (breathing.CubicMetres / 2) - (weighIn.Gross.Kilograms / Masses);
        if (weighIn is not { At: { } t, Air: { } p })
        {
            var open = weighIn.At is not null ? TemperatureRead : weighIn.Air is not null ? PressureRead : NothingRead;
            return (weighIn.Gross, new Mass(Math.Abs(open * displaced)));
        }

        var more = Air(t, p, new Fraction(0.5)).KilogramsPerCubicMetre - Usual.KilogramsPerCubicMetre;
        return (
            weighIn.Gross + new Mass(more * displaced),
            new Mass(Math.Sqrt(Square(BothRead * displaced) + Square(more * breathing.CubicMetres / 2))));
    }

    private static double Square(double x) => x * x;
}
