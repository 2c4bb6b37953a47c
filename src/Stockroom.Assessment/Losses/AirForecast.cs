using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>One gas in the air of a space, against its strictest limit for daily work and its lower flammable limit.</summary>
/// <remarks>Share: by volume; null where the molar mass is not known.</remarks>
public sealed record AirGas(
    Substance Gas, Band<MassConcentration> Concentration, Band<Fraction>? Share, ExposureLimit? Limit, Band<Fraction>? ShareOfLimit, Band<Fraction>? ShareOfLowerFlammableLimit);

/// <summary>
/// What is in the air of a space at a steady state. Of several gases their shares of limits add (C1/L1 + C2/L2 up to 1).
/// </summary>
/// <remarks>Gases: the one nearest to its limit first. Room: the air outside a cabinet; null where the space is the room.</remarks>
public sealed record AirForecast(IReadOnlyList<AirGas> Gases, AirForecast? Room = null)
{
    /// <summary>Oxygen in fresh air, and the least that counts as enough (29 CFR 1910.134 and 1910.146).</summary>
    public static readonly Fraction FreshOxygen = new(0.2095);

    public static readonly Fraction LeastOxygen = new(0.195);

    private AirGas? Leading => Gases.Count > 0 ? Gases[0] : null;

    public Band<MassConcentration> Concentration => Leading?.Concentration ?? default;

    public Band<Fraction>? Share => Leading?.Share;

    public ExposureLimit? Limit => Leading?.Limit;

    /// <summary>Sum over all gases that have a limit; null where none has.</summary>
    public Fraction? ShareOfLimit => Sum(g => g.ShareOfLimit)?.Expected;

    /// <summary>Sum over all gases that burn; null where none does.</summary>
    public Fraction? ShareOfLowerFlammableLimit => Sum(g => g.ShareOfLowerFlammableLimit)?.Expected;

    /// <summary>The same sums with their bands.</summary>
    public Band<Fraction>? LimitBand => Sum(g => g.ShareOfLimit);

    public Band<Fraction>? FlammableBand => Sum(g => g.ShareOfLowerFlammableLimit);

    /// <summary>What is left of the oxygen where a gas takes the room of air.</summary>
    public Fraction Oxygen => FreshOxygen * Math.Max(0, 1 - Gases.Sum(g => g.Share?.Expected.Value ?? 0));

    /// <summary>What one breakage would bring; null where it was not asked.</summary>
    public AirBreakage? Breakage { get; init; }

    /// <summary>Radon-222 in the air; null where none is made.</summary>
    public RadonForecast? Radon { get; init; }

    /// <summary>Thoron in the air; null where none is made.</summary>
    public RadonForecast? Thoron { get; init; }

    private Band<Fraction>? Sum(Func<AirGas, Band<Fraction>?> of)
    {
        var known = Gases.Select(of).OfType<Band<Fraction>>().ToList();
        return known.Count == 0
            ? null
            : new Band<Fraction>(new(known.Sum(k => k.Low.Value)), new(known.Sum(k => k.Expected.Value)), new(known.Sum(k => k.High.Value)));
    }
}

/// <summary>Air of a closed space after its whole content has evaporated into it, none let out, each vapour at most at saturation.</summary>
/// <remarks>ShareOfDanger: of the concentration that is immediately dangerous to life; null where none is listed.</remarks>
public sealed record AirBreakage(
    Substance Gas, MassConcentration Concentration, Fraction? Share, Fraction? ShareOfLimit, Fraction? ShareOfDanger, Fraction? ShareOfLowerFlammableLimit, Fraction Oxygen);
