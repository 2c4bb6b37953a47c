using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Vessels;

/// <summary>A pure content in a sealed ampoule at a temperature: liquid volume, liquid-full temperature, pressure.</summary>
internal sealed class Filling(Substance pure, Mass mass, Ampoule ampoule, PropertyFacts facts)
{
    private const double StepKelvin = 1;
    private const double HighestKelvin = 700;

    /// <summary>A verdict that needs no pressure: a solid that does not melt or steam at the warmest is sound if it fits.</summary>
    public AmpouleFill? Always(Temperature mean)
    {
        var at = facts.StateAt(pure, mean);
        if (at != MatterState.Solid || facts.SolidDensity(pure).Value is not { } density)
            return null;
        var volume = new Volume(mass.Kilograms / density.KilogramsPerCubicMetre);
        if (volume > ampoule.Volume)
            return new AmpouleFill(FillVerdict.Unsafe, null, null, null, null, null, ampoule.Strength, null, [$"{mass.Grams:0.##} g is more than the ampoule holds"]);
        return null;
    }

    public Volume? Liquid(Temperature t) =>
        !IsGasThroughout(t) && facts.LiquidDensity(pure, t).Value is { } rho ? new Volume(mass.Kilograms / rho.KilogramsPerCubicMetre) : null;

    /// <summary>Null where the liquid does not fill the glass below the end of its fit.</summary>
    public Temperature? LiquidFull()
    {
        Temperature? below = null;
        for (var k = 250.0; k < HighestKelvin; k += StepKelvin)
        {
            var t = new Temperature(k);
            if (facts.LiquidDensity(pure, t).Value is not { } rho)
            {
                if (below is not null)
                    return null;
                continue;
            }

            if (mass.Kilograms / rho.KilogramsPerCubicMetre >= ampoule.VolumeAt(t).CubicMetres)
                return below is { } b ? Bisect(b, t) : t;
            below = t;
        }

        return null;
    }

    /// <summary>True above the critical temperature, and where there is too little to leave any liquid.</summary>
    public bool IsGasThroughout(Temperature t)
    {
        if (facts.CriticalTemperature(pure).Value is { } tc && t >= tc)
            return true;
        var saturation = facts.VapourPressure(pure, t).Value;
        return saturation is { } p && ByGasLaw(t) < p;
    }

    /// <summary>Absolute; null where it is not known.</summary>
    public Pressure? Pressure(Temperature t)
    {
        if (IsGasThroughout(t))
            return ByGasLaw(t) + Trapped(t, ampoule.VolumeAt(t));
        var state = facts.StateAt(pure, t);
        if (facts.VapourPressure(pure, t).Value is not { } p)
            return state == MatterState.Solid ? Trapped(t, Room(t)) : null;
        return p + Trapped(t, Room(t));
    }

    public string Why(Temperature t) => facts.VapourPressure(pure, t).Reason ?? $"the liquid density of {pure.Name} is not in the tables";

    /// <summary>The filling rule for liquefied gases, where the content is one; null where it is met or does not apply.</summary>
    public string? OverRatio()
    {
        if (facts.StateAt(pure, Temperature.FromCelsius(20)) != MatterState.Gas || facts.LiquidDensity(pure, FillingRatio.DensityAt).Value is not { } rho)
            return null;
        var ratio = new Density(mass.Kilograms / ampoule.Volume.CubicMetres);
        var greatest = FillingRatio.Greatest(rho);
        return ratio > greatest
            ? $"{ratio.GramsPerMillilitre:0.00} kg/L is above the filling ratio of {greatest.GramsPerMillilitre:0.00} (UN P200: 0.95 times the liquid's density at 50 degrees C)"
            : null;
    }

    // Compressibility taken as 1: within a fifth below half the critical pressure.
    private Pressure ByGasLaw(Temperature t) =>
        GasLaw.Pressure(new AmountOfSubstance(mass.Kilograms / (pure.MolarMass?.KilogramsPerMole ?? 0.03)), ampoule.VolumeAt(t), t);

    private Volume Room(Temperature t)
    {
        var content = Liquid(t) ?? (facts.SolidDensity(pure).Value is { } rho ? new Volume(mass.Kilograms / rho.KilogramsPerCubicMetre) : default);
        return new Volume(Math.Max(ampoule.VolumeAt(t).CubicMetres - content.CubicMetres, ampoule.Volume.CubicMetres * 1e-4));
    }

    private Pressure Trapped(Temperature t, Volume room)
    {
        // A content that is a gas when sealed is itself what was sealed in.
        if (IsGasThroughout(ampoule.SealedAt))
            return default;
        var sealedRoom = Room(ampoule.SealedAt);
        return ampoule.SealedPressure * (t.Kelvin / ampoule.SealedAt.Kelvin * (sealedRoom / room));
    }

    private Temperature Bisect(Temperature low, Temperature high)
    {
        for (var i = 0; i < 40; i++)
        {
            var middle = new Temperature((low.Kelvin + high.Kelvin) / 2);
            var full = facts.LiquidDensity(pure, middle).Value is { } rho && mass.Kilograms / rho.KilogramsPerCubicMetre >= ampoule.VolumeAt(middle).CubicMetres;
            (low, high) = full ? (low, middle) : (middle, high);
        }

        return high;
    }
}
