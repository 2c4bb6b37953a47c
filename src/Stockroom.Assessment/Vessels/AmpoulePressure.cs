using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Vessels;

/// <summary>Pressure in a flame-sealed ampoule of a pure content, and what to make of it.</summary>
internal static class AmpoulePressure
{
    public static AmpouleFill Judge(Substance pure, Mass mass, Ampoule ampoule, Temperature mean, Temperature warmest, PropertyFacts facts)
    {
        var filling = new Filling(pure, mass, ampoule, facts);
        if (filling.Always(mean) is { } solid)
            return solid;
        var because = new List<string>();
        var liquid = filling.Liquid(mean);
        Fraction? ullage = liquid is { } l ? new Fraction(1 - (l / ampoule.VolumeAt(mean))) : null;
        var full = filling.LiquidFull();
        if (ullage is { Value: < 0 })
            return new AmpouleFill(FillVerdict.Unsafe, liquid, ullage, full, null, null, ampoule.Strength, null, [$"{mass.Grams:0.##} g of liquid is more than the ampoule holds"]);
        if (full is { } f && f <= warmest)
        {
            because.Add($"liquid-full at {f.Celsius:0} degrees C, and the place reaches {warmest.Celsius:0}: the liquid bursts the glass whatever its strength");
            return new AmpouleFill(FillVerdict.Unsafe, liquid, ullage, full, filling.Pressure(mean), null, ampoule.Strength, null, because);
        }

        if (filling.Pressure(warmest) is not { } hot)
            return AmpouleFill.Undecided(ampoule, filling.Why(warmest));
        var (verdict, margin) = AmpouleFill.OfMargin(hot, ampoule.Strength);
        because.Add($"{hot.Bar:0.00} bar absolute at {warmest.Celsius:0} degrees C against a strength of {ampoule.Strength.Low.Bar:0.#} to {ampoule.Strength.High.Bar:0.#} bar across the wall (EN 1595 and Lame, a third for flame-sealed ends)");
        because.Add(full is { } at ? $"liquid-full at {at.Celsius:0} degrees C" : filling.IsGasThroughout(warmest) ? "a gas at these temperatures, by the gas law" : "no liquid-full temperature below the end of its density fit");
        if (full is { } near && near < FillingRatio.NotFullAt)
        {
            verdict = Worse(verdict, FillVerdict.Marginal);
            because.Add("liquid-full below 60 degrees C: against the filling rule for liquefied gases (UN P200), which allows no vessel to be so");
        }

        if (filling.OverRatio() is { } ratio)
        {
            verdict = Worse(verdict, FillVerdict.Marginal);
            because.Add(ratio);
        }

        if (Freezing(pure) is { } freezing)
            because.Add(freezing);
        return new AmpouleFill(verdict, liquid, ullage, full, filling.Pressure(mean), hot, ampoule.Strength, margin, because);
    }

    private static FillVerdict Worse(FillVerdict a, FillVerdict b) => a > b ? a : b;

    private static string? Freezing(Substance pure) => pure.Name is "water" or "gallium" or "bismuth" or "antimony"
        ? $"{pure.Name} swells as it freezes and needs room below its melting point too"
        : null;
}
