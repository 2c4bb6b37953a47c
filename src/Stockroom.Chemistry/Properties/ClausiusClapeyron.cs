using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Clausius-Clapeyron equation: ln(p2/p1) = -(H/R)(1/T2 - 1/T1), the enthalpy of vaporisation taken constant.
/// Source: Atkins, Physical Chemistry, 10th ed., section 4B. Good over some tens of kelvins.
/// Worked example: benzene, 30.8 kJ/mol, 101.325 kPa at 353.25 K: about 14 kPa at 298.15 K (measured 12.7).
/// </summary>
public static class ClausiusClapeyron
{
    public static Pressure Extrapolate(Pressure known, Temperature at, MolarEnergy vaporisation, Temperature to) =>
        known * Math.Exp(-vaporisation.JoulesPerMole / PhysicalConstants.GasConstant * ((1 / to.Kelvin) - (1 / at.Kelvin)));
}
