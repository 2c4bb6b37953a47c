using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Vessels;

/// <summary>So much of a content in a sealed ampoule at a temperature: liquid volume, liquid-full temperature, absolute pressure.</summary>
internal sealed class Filling(SealedContent content, Mass mass, Ampoule ampoule, AmountOfSubstance helium)
{
    private const double LowestKelvin = 180;
    private const double HighestKelvin = 720;
    private const int Stride = 12;

    /// <summary>Below liquid propane, silane and lithium; common practice.</summary>
    private static readonly Density Lightest = new(400);

    /// <summary>Content of the tube as it was closed: the gas in the neck may be hot, the content is not warmer than a room.</summary>
    private Temperature ContentAtSealing => ampoule.SealedAt.Celsius > 25 ? Temperature.FromCelsius(20) : ampoule.SealedAt;

    public Volume? Liquid(Temperature t) =>
        !IsGasThroughout(t) && content.LiquidDensity(t).Value is { } rho ? Over(rho) : null;

    /// <summary>What the content fills, liquid or solid; null for a gas and where no density is known.</summary>
    public Volume? Condensed(Temperature t) =>
        IsGasThroughout(t) ? null : Liquid(t) ?? (content.SolidDensity is { } rho ? Over(rho) : null);

    /// <summary>What the content fills when frozen, for one that swells; null for any other.</summary>
    public Volume? Frozen()
    {
        if (content.Growth is not { } growth)
            return null;
        var melting = content.Melting ?? Temperature.FromCelsius(0);
        var liquid = content.LiquidDensity(new Temperature(melting.Kelvin + 0.5)).Value ?? content.SolidDensity;
        return liquid is { } rho ? Over(rho) * (1 + growth.Growth.Value) : null;
    }

    /// <summary>Where the liquid alone fills the glass; null where that lies above the end of its density fit.</summary>
    public Temperature? LiquidFull()
    {
        // By strides first; only the stride in which something happens is gone through kelvin by kelvin.
        var (from, below) = (LowestKelvin, (Temperature?)null);
        while (from < HighestKelvin)
        {
            var ahead = new Temperature(from + Stride);
            if (content.LiquidDensity(ahead).Value is null == below is null && !IsFull(ahead))
            {
                (from, below) = (ahead.Kelvin, below is null ? null : ahead);
                continue;
            }

            for (var k = from; k <= from + Stride; k++)
            {
                var t = new Temperature(k);
                if (content.LiquidDensity(t).Value is null)
                {
                    if (below is not null)
                        return null;
                    continue;
                }

                if (IsFull(t))
                    return below is { } b ? Bisect(b, t) : t;
                below = t;
            }

            from += Stride;
        }

        return null;
    }

    /// <summary>True above the critical temperature, and where there is too little to leave any liquid.</summary>
    public bool IsGasThroughout(Temperature t)
    {
        if (content.Critical is { } tc && t >= tc)
            return true;
        return content.Pure is { MolarMass: not null } && content.Vapour(t).Value is { } saturation && Ideal(t) * VapourCompressibility(saturation, t) < saturation;
    }

    /// <summary>
    /// True for a liquid without a known density that may be too much: hardly any is lighter than <see cref="Lightest"/>. What of a solid went
    /// in has room.
    /// </summary>
    public bool MayOverfill(Temperature t) =>
        content.StateAt(t) != MatterState.Solid && !IsGasThroughout(t) && Condensed(t) is null && Over(Lightest).CubicMetres > ampoule.Volume.CubicMetres / 2;

    /// <summary>Absolute, with its uncertainty; missing where it is not known.</summary>
    public Fact<Pressure> Pressure(Temperature t)
    {
        if (IsGasThroughout(t))
        {
            return Real(t) is { } gas
                ? Fact<Pressure>.Of(gas + Trapped(t, ampoule.VolumeAt(t)), Spread.OfPercent(content.CriticalPressure is null ? 20 : 7), RealGas)
                : Fact<Pressure>.Missing($"{mass.Grams:0.##} g of {content.Name} in {ampoule.Volume.Millilitres:0.#} mL is denser than any gas: it fills the glass like a liquid");
        }

        var room = Room(t);
        var vapour = content.Vapour(t);
        if (vapour.Value is not { } p)
            return content.StateAt(t) == MatterState.Solid ? Fact<Pressure>.Of(Trapped(t, room), Spread.None, RealGas) : vapour;

        // The vapour's uncertainty counts by its share of the whole; of hafnium in the cold no figure is small enough.
        var trapped = Trapped(t, room);
        var spread = (p + trapped).Pascals > 0 ? Spread.Of(((p * vapour.Spread.Factor) + trapped) / (p + trapped)) : Spread.None;
        return Fact<Pressure>.Of(p + trapped, spread, vapour.Provenance!, vapour.Note);
    }

    /// <summary>p V/(n R T) of a content that is a gas throughout; null where only the ideal law could be used.</summary>
    public Fraction? Compressibility(Temperature t) => content.CriticalPressure is not null && Amount is { } n && Real(t) is { } p
        ? RedlichKwong.Compressibility(p, n, ampoule.VolumeAt(t), t)
        : null;

    /// <summary>What helium of decay adds.</summary>
    public Pressure Helium(Temperature t) => GasLaw.Pressure(helium, Room(t), t);

    /// <summary>True for a content that was a gas when the tube was closed: it is itself what was sealed in.</summary>
    public bool WasSealedAsGas => IsGasThroughout(ContentAtSealing) && content.StateAt(ContentAtSealing) == MatterState.Gas;

    private static Chemistry.Tables.Provenance RealGas => new("gas law with the compressibility of Redlich and Kwong, Chem. Rev. 44, 233", "-", "1949");

    private AmountOfSubstance? Amount => content.Pure?.MolarMass is { } m ? new AmountOfSubstance(mass.Kilograms / m.KilogramsPerMole) : null;

    private Volume Over(Density rho) => new(mass.Kilograms / rho.KilogramsPerCubicMetre);

    private bool IsFull(Temperature t) => content.LiquidDensity(t).Value is { } rho && Over(rho) >= ampoule.VolumeAt(t);

    // Near the critical point saturated vapour is up to three times as dense as an ideal gas.
    private double VapourCompressibility(Pressure saturation, Temperature t) => content.Critical is { } tc && content.CriticalPressure is { } pc
        ? RedlichKwong.VapourCompressibility(saturation, t, tc, pc).Value
        : 1;

    private Pressure Ideal(Temperature t) => Amount is { } n ? GasLaw.Pressure(n, ampoule.VolumeAt(t), t) : default;

    private Pressure? Real(Temperature t)
    {
        if (Amount is not { } n)
            return null;
        if (content.Critical is not { } tc || content.CriticalPressure is not { } pc)
            return Ideal(t);
        var v = ampoule.VolumeAt(t);
        return v > RedlichKwong.LeastVolume(n, tc, pc) * 1.02 ? RedlichKwong.Pressure(n, v, t, tc, pc) : null;
    }

    private Volume Room(Temperature t) => new(Math.Max(
        ampoule.VolumeAt(t).CubicMetres - (Condensed(t)?.CubicMetres ?? 0), ampoule.Volume.CubicMetres * 1e-4));

    private Pressure Trapped(Temperature t, Volume room)
    {
        var decay = GasLaw.Pressure(helium, room, t);

        if (WasSealedAsGas)
            return decay;
        return decay + (ampoule.SealedPressure * (t.Kelvin / ampoule.SealedAt.Kelvin * (Room(ContentAtSealing) / room)));
    }

    private Temperature Bisect(Temperature low, Temperature high)
    {
        for (var i = 0; i < 40; i++)
        {
            var middle = new Temperature((low.Kelvin + high.Kelvin) / 2);
            (low, high) = IsFull(middle) ? (low, middle) : (middle, high);
        }

        return high;
    }
}
