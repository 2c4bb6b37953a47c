using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Vessels;

/// <summary>
/// A content as it behaves in a closed glass: density of its liquid, pressure over it, what it does on freezing. A mixture expands as
/// its parts do beside each other and its pressure is the sum of its parts'.
/// </summary>
internal sealed class SealedContent(Content content, PropertyFacts facts)
{
    private static readonly Temperature Stated = Temperature.FromCelsius(20);
    private static readonly Spread Mixing = Spread.OfPercent(1.5);

    public string Name => content.Name;

    public Substance? Pure => content.Pure;

    public Content Content => content;

    /// <summary>False for a mixture that is no liquid: nothing can be computed for it.</summary>
    public bool IsComputable => Pure is not null || (content.State == MatterState.Liquid && content.Density is not null);

    public Temperature? Critical => Pure is { } pure ? facts.CriticalTemperature(pure).Value : null;

    public Pressure? CriticalPressure => Pure is { } pure ? facts.CriticalPressure(pure).Value : null;

    public Temperature? Melting => Pure is { } pure ? facts.MeltingPoint(pure).Value : null;

    public FreezingGrowth? Growth => Pure is { } pure
        ? facts.GrowthOnFreezing(pure)
        : content.WaterPercent >= 95 ? facts.GrowthOnFreezing(facts.Catalogue["water"]) : null;

    public MatterState StateAt(Temperature t) => Pure is { } pure ? facts.StateAt(pure, t) : content.State;

    /// <summary>Density of the liquid at saturation; missing for a solid and above the critical temperature.</summary>
    public Fact<Density> LiquidDensity(Temperature t) => Pure is { } pure ? facts.LiquidDensity(pure, t) : OfMixture(t);

    public Density? SolidDensity => Pure is { } pure ? facts.SolidDensity(pure).Value ?? (Melting is { } melting ? LiquidDensity(melting).Value : null) : null;

    /// <summary>Sum of the partial pressures; missing where a volatile part's is not known.</summary>
    public Fact<Pressure> Vapour(Temperature t)
    {
        if (Pure is { DissolvedFormOf: null } pure)
            return facts.VapourPressure(pure, t);
        var (sum, spread, known) = (0.0, Spread.None, (Fact<Pressure>?)null);
        foreach (var v in Vapours.Over(content, t, facts))
        {
            if (v.Pressure.Value is not { } p)
                return Fact<Pressure>.Missing($"the vapour pressure of {v.Gas.Name} in {Name} is not known: {v.Pressure.Reason}");
            if (known is null || p.Pascals > sum)
                (spread, known) = (v.Pressure.Spread, v.Pressure);
            sum += p.Pascals;
        }

        return known is null
            ? Fact<Pressure>.Missing($"no part of {Name} has a vapour pressure in the tables")
            : Fact<Pressure>.Of(new Pressure(sum), spread, known.Provenance!, known.Note);
    }

    private Fact<Density> OfMixture(Temperature t)
    {
        if (content.Density is not { } stated)
            return Fact<Density>.Missing($"no density of {Name} is in the tables");
        var (at, then, counted) = (0.0, 0.0, 0.0);
        foreach (var part in content.Parts)
        {
            if (facts.LiquidDensity(part.Substance, Stated).Value is not { } a || facts.LiquidDensity(part.Substance, t).Value is not { } b)
                continue;
            var share = (double)part.Percent;
            (at, then, counted) = (at + (share / a.KilogramsPerCubicMetre), then + (share / b.KilogramsPerCubicMetre), counted + share);
        }

        return counted < 50
            ? Fact<Density>.Missing($"how {Name} expands is not in the tables")
            : Fact<Density>.Of(stated * (at / then), Mixing, content.Provenance ?? content.Parts[0].Substance.Provenance, "expands as its parts do side by side");
    }
}
