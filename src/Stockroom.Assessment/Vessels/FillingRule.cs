using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Vessels;

/// <summary>
/// The filling rule of UN P200 for liquefied gases: a listed ratio, else 0.95 times the liquid's density at 50 degrees C. It was
/// written for metal; meeting it does not bless glass, breaking it counts against any closed vessel.
/// </summary>
internal static class FillingRule
{
    // Mercury and molten gallium are no liquefied gases: below this pressure at 50 degrees C only the room counts.
    private const double VolatilePascals = 1000;

    public static IEnumerable<string> Against(AmpouleQuestion question, SealedContent content, PropertyFacts facts)
    {
        if (content.StateAt(question.Warmest) == MatterState.Solid || content.Vapour(FillingRatio.DensityAt).Value is { Pascals: < VolatilePascals })
            yield break;
        var ratio = new Density(question.Fill.Kilograms / question.Ampoule.Volume.CubicMetres);
        if (Greatest(content, facts) is { } greatest && ratio > greatest.Ratio)
            yield return $"{ratio.GramsPerMillilitre:0.00} kg/L is above the filling ratio of {greatest.Ratio.GramsPerMillilitre:0.00} ({greatest.Source})";
    }

    /// <summary>The greatest ratio allowed in metal, and by which part of the rule; null where none can be computed.</summary>
    public static (Density Ratio, string Source)? Greatest(SealedContent content, PropertyFacts facts)
    {
        if (content.Pure is { } pure && facts.ListedFillingRatios(pure) is { Count: > 0 } listed)
            return (listed[0].Ratio, $"UN P200 Table 2, {listed[0].UnNumber}, at a test pressure of {listed[0].TestPressure.Bar:0} bar that no glass has");
        if (content.LiquidDensity(FillingRatio.DensityAt).Value is { } at50)
            return (FillingRatio.Greatest(at50), "UN P200: 0.95 times the liquid's density at 50 degrees C");
        if (content.Pure is { } gas && facts.StateAt(gas, Temperature.FromCelsius(20)) == MatterState.Gas && facts.BoilingPoint(gas).Value is { } boiling
            && facts.LiquidDensity(gas, boiling).Value is { } atBoiling)
            return (FillingRatio.Default(boiling, atBoiling), "UN P200: the default of (0.0032 Tb - 0.24) times the density at the boiling point");
        return null;
    }
}
