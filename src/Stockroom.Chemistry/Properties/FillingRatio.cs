using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Greatest filling of a receptacle with a low-pressure liquefied gas: 0.95 times the liquid density at 50 degrees C, and not full at 60.
/// Written for metal cylinders; meeting it does not bless glass.
/// Source: UN Model Regulations, packing instruction P200 (3)(c).
/// Worked example: chlorine, 1311 kg/m3 at 50 degrees C: 1.25 kg/L.
/// </summary>
public static class FillingRatio
{
    public static readonly Temperature DensityAt = Temperature.FromCelsius(50);

    public static readonly Temperature NotFullAt = Temperature.FromCelsius(60);

    public static Density Greatest(Density liquidAt50) => liquidAt50 * 0.95;

    /// <summary>Where no ratio is listed: (0.0032 Tb - 0.24) times the liquid density at the boiling point Tb in K.</summary>
    public static Density Default(Temperature boiling, Density liquidAtBoiling) =>
        liquidAtBoiling * ((0.0032 * boiling.Kelvin) - 0.24);
}
