using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Decay of hypochlorite in alkaline solution, second order in hypochlorite:
/// log10 k2 = 0.149 I + log10(2.083e10 T exp(-1.018e5/(R T)) exp(-56.5/R)), k2 in L/(mol s), I the ionic strength in mol/L.
/// pH 11 to 13, 20 to 60 degrees C, to about half strength lost; metals and light make it faster. Within a factor of 2.
/// Source: Adam and Gordon, predictive chlorine model, AWWA Research Foundation (from memory; constants in decomposition.tsv).
/// Worked example: 125 g/L available chlorine at 26.7 degrees C: 99 g/L after 30 days in a published strength-loss table.
/// </summary>
public static class HypochloriteDecay
{
    /// <summary>Ionic strength: hypochlorite and the chloride made with it, besides other salts.</summary>
    public static MolarConcentration IonicStrength(MolarConcentration hypochlorite, MolarConcentration otherSalts) =>
        (hypochlorite * 2) + otherSalts;

    public static SecondOrderRateConstant RateConstant(FitCoefficients k, Temperature t, MolarConcentration ionicStrength)
    {
        var rt = PhysicalConstants.GasConstant * t.Kelvin;
        var atZero = k.B * t.Kelvin * Math.Exp(-k.C / rt) * Math.Exp(-k.D / PhysicalConstants.GasConstant);
        return SecondOrderRateConstant.FromLitresPerMoleSecond(atZero * Math.Pow(10, k.A * ionicStrength.MolesPerLitre));
    }
}
