using Stockroom.Assessment.Losses.Ingress;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Vessels;

/// <summary>The reasons of a verdict, the one that settles it first.</summary>
internal static class AmpouleWords
{
    public static IEnumerable<string> Of(
        AmpouleQuestion question, SealedContent content, Filling filling, AmpouleFill fill, Pressure atWarmest, IReadOnlyList<string> against, FillVerdict verdict, Band<Fraction> margin)
    {
        var strength = fill.Strength;
        var pressure = $"{atWarmest.Bar:0.00} bar absolute at {question.Warmest.Celsius:0} degrees C against a strength of {strength.Low.Bar:0.#} to {strength.High.Bar:0.#} bar across the wall (EN 1595 and Lame, divided by {question.Ampoule.Derating.Value:0.#} for flame-sealed ends{(question.Ampoule.Glass == GlassKind.SodaLime ? " and soda-lime glass" : "")})";
        var byPressure = margin.Expected.Value < 2 || verdict == FillVerdict.Unsafe;
        if (byPressure)
            yield return pressure;
        foreach (var reason in against)
            yield return reason;
        if (!byPressure)
            yield return pressure;
        if (Full(content, filling, fill, question.Warmest) is { } full)
            yield return full;
        if (filling.Helium(question.Warmest) is { Bar: > 0.01 } helium)
            yield return $"helium of alpha decay adds up to {helium.Bar:0.00} bar in {question.Kept.Years:0} years";
        if (Radiolysis(question.Content) is { } radiolysis)
            yield return radiolysis;
        if (content.Growth is { } growth && !Frost.Freezes(question, content, out var melting))
            yield return $"it swells by {growth.Growth.Percent:0.#} per cent as it freezes at {melting.Celsius:0.#} degrees C: keep it from there, or leave that much room";
        if (question.Ampoule.Gas == TrappedGas.Air && !filling.WasSealedAsGas && question.Content.Parts.FirstOrDefault(p => AirUptake.Of(p.Substance, "oxygen") is not null) is { } taker)
            yield return $"{taker.Substance.Name} takes up the oxygen of the air sealed in with it, up to a fifth of that air's pressure, which is not taken off here";
        yield return filling.WasSealedAsGas ? "a gas when sealed: taken as alone in the tube, with no other gas beside it" : Trapped(question);
    }

    private static string? Full(SealedContent content, Filling filling, AmpouleFill fill, Temperature warmest)
    {
        if (fill.LiquidFull is { } at)
            return $"liquid-full at {at.Celsius:0} degrees C";
        if (!filling.IsGasThroughout(warmest))
            return content.StateAt(warmest) == MatterState.Solid ? null
                : content.LiquidDensity(warmest).Value is null ? $"where it is liquid-full is not known: {content.LiquidDensity(warmest).Reason}"
                : "no liquid-full temperature below the end of its density fit";
        var why = content.Critical is { } tc && warmest >= tc
            ? $"above its critical temperature of {tc.Celsius:0} degrees C there is no liquid and no saturation pressure"
            : "too little to leave any liquid";
        return $"{why}: a gas throughout at {warmest.Celsius:0} degrees C, by the gas law with a compressibility of {filling.Compressibility(warmest)?.Value ?? 1:0.00}{(filling.Compressibility(warmest) is null ? " assumed" : " (Redlich-Kwong)")}";
    }

    private static string? Radiolysis(Content content) => content.Parts.Any(p => GasMakers.IsStrongAlpha(p.Substance))
        ? "only bone dry: with any water it makes gas by radiolysis, far more than its helium"
        : null;

    private static string Trapped(AmpouleQuestion question)
    {
        var ampoule = question.Ampoule;
        if (ampoule.Gas == TrappedGas.Vacuum && ampoule.SealedPressure.Pascals <= 0)
            return "sealed under vacuum: no gas but its own";
        var warm = ampoule.SealedAt.Celsius > 25 ? ", the content itself taken at 20" : "";
        return $"{ampoule.GasName} sealed in at {ampoule.SealedPressure.Bar:0.00} bar absolute and {ampoule.SealedAt.Celsius:0} degrees C{warm}, squeezed as the content expands";
    }
}
