using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Vessels;

/// <summary>Whether a fill may stand in a flame-sealed ampoule.</summary>
public enum FillVerdict
{
    Sound = 0,
    Marginal,
    Unsafe,

    /// <summary>Contents that make gas are not sealed at any fill.</summary>
    NeverSeal,
}

/// <summary>
/// Pressure and room in a flame-sealed ampoule. Pressures are absolute, strength is a difference across the wall. The liquid
/// expands by its density law, the trapped gas is squeezed into what is left, the vapour stands at saturation; above the critical
/// temperature all of it is a gas by the gas law.
/// </summary>
/// <remarks>Verdict: null where the pressure is not known. LiquidFull: where the liquid alone fills the glass; null where that lies above the critical point or is not known.
/// Margin: strength over the pressure across the wall at the warmest.</remarks>
public sealed record AmpouleFill(
    FillVerdict? Verdict, Volume? Liquid, Fraction? Ullage, Temperature? LiquidFull, Pressure? AtMean, Pressure? AtWarmest, Band<Pressure> Strength, Band<Fraction>? Margin, IReadOnlyList<string> Because)
{
    private const double SoundMargin = 2;
    private static readonly Temperature AssumedWarmest = Temperature.FromCelsius(40);

    public static AmpouleFill Of(Content content, Mass mass, Ampoule ampoule, Temperature mean, Temperature warmest, PropertyFacts facts)
    {
        if (GasMakers.Reason(content) is { } never)
            return new AmpouleFill(FillVerdict.NeverSeal, null, null, null, null, null, ampoule.Strength, null, [never]);
        if (content.Pure is not { } pure)
            return Undecided(ampoule, $"{content.Name} is a mixture: its pressure in a sealed tube is not computed");
        return AmpoulePressure.Judge(pure, mass, ampoule, mean, warmest, facts);
    }

    /// <summary>Of a flame-sealed vessel as it stands, with air at one atmosphere sealed in; null for any other closure.</summary>
    public static AmpouleFill? Of(Situation situation, PropertyFacts facts)
    {
        if (situation.Closure.Mechanism != ClosureMechanism.Fused)
            return null;
        var warmest = situation.Warmest ?? new Temperature(Math.Max(AssumedWarmest.Kelvin, situation.Temperature.Kelvin + situation.DailySwing.Kelvins));
        var fill = Of(situation.Content, situation.Amount, Ampoule.Of(situation.Vessel), situation.Temperature, warmest, facts);
        return situation.Warmest is null
            ? fill with { Because = [.. fill.Because, $"the warmest of the place is not known; {warmest.Celsius:0} degrees C assumed"] }
            : fill;
    }

    internal static AmpouleFill Undecided(Ampoule ampoule, string reason) =>
        new(null, null, null, null, null, null, ampoule.Strength, null, [reason]);

    internal static (FillVerdict Verdict, Band<Fraction> Margin) OfMargin(Pressure atWarmest, Band<Pressure> strength)
    {
        var across = Math.Max(atWarmest.Pascals - PhysicalConstants.StandardAtmosphere.Pascals, 1);
        var margin = strength.Select(s => new Fraction(Math.Min(s.Pascals / across, 1000)));
        var verdict = margin.Low.Value >= SoundMargin / 2 && margin.Expected.Value >= SoundMargin ? FillVerdict.Sound : margin.Expected.Value >= 1 ? FillVerdict.Marginal : FillVerdict.Unsafe;
        return (verdict, margin);
    }
}
