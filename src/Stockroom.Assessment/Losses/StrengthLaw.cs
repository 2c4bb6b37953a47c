using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>How fast a decomposing content loses strength, and what is left of it after a time.</summary>
internal static class StrengthLaw
{
    /// <summary>The share lost per second at a concentration.</summary>
    public static RateConstant Of(DecompositionLaw law, MolarConcentration c, MolarConcentration otherSalts, Temperature t) => law.Kind switch
    {
        DecompositionKind.SecondOrderIonic => new RateConstant(
            HypochloriteDecay.RateConstant(law.Coefficients, t, HypochloriteDecay.IonicStrength(c, otherSalts)).CubicMetresPerMoleSecond * c.MolesPerCubicMetre),
        _ => PeroxideDecay.RateConstant(law.Coefficients, law.At!.Value, t),
    };

    /// <summary>Share of the strength left after a time; the ionic strength stays nearly that of the start, as chloride replaces hypochlorite.</summary>
    public static Fraction Left(DecompositionLaw law, RateConstant relativeAtStart, Span elapsed)
    {
        var x = Math.Max(0, relativeAtStart.PerSecond * elapsed.Seconds);
        return new Fraction(law.Kind == DecompositionKind.SecondOrderIonic ? 1 / (1 + x) : Math.Exp(-x));
    }

    /// <summary>When a share of the strength is left.</summary>
    public static Span TimeTo(DecompositionLaw law, RateConstant relativeAtStart, Fraction left) =>
        new((law.Kind == DecompositionKind.SecondOrderIonic ? (1 / left.Value) - 1 : -Math.Log(left.Value)) / relativeAtStart.PerSecond);
}
