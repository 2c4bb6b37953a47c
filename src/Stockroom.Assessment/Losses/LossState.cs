using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>A situation at one moment: composition and amount as they are then, and what follows from them.</summary>
public sealed class LossState
{
    // Of the air's pressure: what a dissolved gas counts for at most, and it with the vapours of the liquids beside it.
    private const double MostOfAGas = 0.9;
    private const double Together = 0.99;

    private IReadOnlyList<Vapour>? _vapours;
    private Pressure? _moisture;
    private double? _ofLiquids;
    private bool? _isGas;
    private Density? _density;

    public LossState(Situation situation, PropertyFacts facts)
        : this(situation, facts, situation.Content, situation.Amount)
    {
    }

    public LossState(Situation situation, PropertyFacts facts, Content content, Mass amount)
        : this(situation, facts, content, amount, new Climate.Moment(situation.Temperature, situation.Temperature, 1))
    {
    }

    internal LossState(Situation situation, PropertyFacts facts, Content content, Mass amount, Climate.Moment moment)
    {
        Temperature = moment.At;
        DayMean = moment.DayMean;
        Situation = situation;
        Facts = facts;
        Content = content;
        Amount = amount;
    }

    public static Pressure Atmosphere => PhysicalConstants.StandardAtmosphere;

    public Situation Situation { get; }

    public PropertyFacts Facts { get; }

    public Content Content { get; }

    public Mass Amount { get; }

    /// <summary>The temperature of the moment.</summary>
    public Temperature Temperature { get; }

    /// <summary>What the daily swing makes of the vapours, where it was worked out before; null where it is to be computed.</summary>
    internal SwingFactors? Swing { get; init; }

    /// <summary>The mean of the day about which the daily swing goes.</summary>
    public Temperature DayMean { get; }

    public Vessel Vessel => Situation.Vessel;

    public Closure Closure => Situation.Closure;

    public IReadOnlyList<Vapour> Vapour => _vapours ??= Vapours.Over(Content, Temperature, Facts);

    /// <summary>
    /// Partial pressure of a vapour over the content. A dissolved gas never counts for more than nine tenths of the air's pressure, nor for more
    /// than the vapours beside it leave of that: what is above leaves the solution at once, and as it grows weaker it does not begin to boil.
    /// </summary>
    public Pressure Over(Vapour v)
    {
        var p = v.Pressure.Value ?? default;
        return Content.Pure is null && v.Gas.State == MatterState.Gas
            ? new Pressure(Math.Min(p.Pascals, Math.Min(MostOfAGas * Atmosphere.Pascals, Math.Max(0, (Together * Atmosphere.Pascals) - OfLiquids))))
            : p;
    }

    /// <summary>What drives a vapour out at a temperature of its own: its partial pressure less that of the room.</summary>
    public Pressure Driving(Vapour v) => new(Math.Max(0, Over(v).Pascals - Outside(v.Gas).Pascals));

    /// <summary>True for a gas at the place's temperature.</summary>
    public bool IsGas => _isGas ??= Content.Pure is { } pure ? Facts.StateAt(pure, Temperature) == MatterState.Gas : Content.State == MatterState.Gas;

    /// <summary>Density of the liquid or solid; 1000 kg/m3 where it is not known, which only sets the height of the level.</summary>
    public Density Density => _density ??= Content.Density
        ?? (Content.Pure is { } pure ? Facts.RoomDensity(pure, Temperature) : null)
        ?? new Density(1000);

    /// <summary>What the content and its liquid cover fill.</summary>
    public Volume Filled
    {
        get
        {
            var content = new Volume(Amount.Kilograms / Density.KilogramsPerCubicMetre);
            return content + Situation.CoverVolume;
        }
    }

    /// <summary>Room above content and cover, never less than a hundredth of the vessel.</summary>
    public Volume Headspace => IsGas
        ? Vessel.Volume
        : new Volume(Math.Max(Vessel.Volume.CubicMetres - Filled.CubicMetres, Vessel.Volume.CubicMetres / 100));

    /// <summary>From the level to the neck.</summary>
    public Length HeadspaceLength => IsGas ? new Length(0) : new Length(Headspace.CubicMetres / Vessel.CrossSection.SquareMetres);

    /// <summary>Pressure of a gas content in the vessel by the gas law.</summary>
    public Pressure GasPressure(Substance gas) =>
        GasLaw.Pressure(new AmountOfSubstance(Amount.Kilograms / (gas.MolarMass?.KilogramsPerMole ?? 0.03)), Vessel.Volume, Temperature);

    private double OfLiquids => _ofLiquids ??= Vapour.Where(v => v.Gas.State != MatterState.Gas).Sum(v => v.Pressure.Value?.Pascals ?? 0);

    /// <summary>Partial pressure of the same vapour in the room: the humidity for water, none else.</summary>
    public Pressure Outside(Substance gas) =>
        gas.Name == "water" ? _moisture ??= (Facts.VapourPressure(gas, Temperature).Value ?? default) * Situation.Humidity.Value : default;
}
