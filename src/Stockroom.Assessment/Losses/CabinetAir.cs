using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>The air of one cabinet, or of a room's open shelves, with everything in it together: shares of limits add up.</summary>
/// <remarks>Of: what each container gives, by its label. Inner sums are of the cabinet's own air, room sums of the air about it.</remarks>
public sealed record CabinetAir(IReadOnlyList<(string Label, AirForecast Air)> Of)
{
    /// <summary>Sum of concentration over lower flammable limit in the cabinet.</summary>
    public Band<Fraction> Flammable => Sum(a => a.FlammableBand);

    /// <summary>Sum of concentration over limit for daily work in the cabinet.</summary>
    public Band<Fraction> Limits => Sum(a => a.LimitBand);

    /// <summary>The same in the room about it, or here where there is no cabinet.</summary>
    public Band<Fraction> RoomLimits => Sum(a => (a.Room ?? a).LimitBand);

    /// <summary>Radon in the room over its reference level.</summary>
    public Band<Fraction> Radon => Sum(a => a.Radon?.ShareOfReference);

    /// <summary>The one whose breakage would come nearest to the flammable limit; null where none burns.</summary>
    public (string Label, AirBreakage Breakage)? WorstFire => Worst(b => b.ShareOfLowerFlammableLimit?.Value);

    /// <summary>The one whose breakage would come nearest to what is immediately dangerous; null where none is listed.</summary>
    public (string Label, AirBreakage Breakage)? WorstDanger => Worst(b => b.ShareOfDanger?.Value);

    /// <summary>The one whose breakage would leave the least oxygen.</summary>
    public (string Label, AirBreakage Breakage)? WorstOxygen => Worst(b => 1 - b.Oxygen.Value);

    /// <summary>Labels by what they add to the room's limits, most first.</summary>
    public IReadOnlyList<string> Leading => [.. Of.OrderByDescending(o => (o.Air.Room ?? o.Air).LimitBand?.Expected.Value ?? 0).Select(o => o.Label)];

    /// <summary>Labels of what gives radon to the room, most first.</summary>
    public IReadOnlyList<string> LeadingRadon =>
        [.. Of.Where(o => o.Air.Radon?.ShareOfReference?.High.Value > 0).OrderByDescending(o => o.Air.Radon!.ShareOfReference!.Value.Expected).Select(o => o.Label)];

    private Band<Fraction> Sum(Func<AirForecast, Band<Fraction>?> of)
    {
        var known = Of.Select(o => of(o.Air)).OfType<Band<Fraction>>().ToList();
        return new Band<Fraction>(new(known.Sum(k => k.Low.Value)), new(known.Sum(k => k.Expected.Value)), new(known.Sum(k => k.High.Value)));
    }

    private (string Label, AirBreakage Breakage)? Worst(Func<AirBreakage, double?> of)
    {
        var broken = Of.Where(o => o.Air.Breakage is { } b && of(b) is not null).ToList();
        if (broken.Count == 0)
            return null;
        var worst = broken.MaxBy(o => of(o.Air.Breakage!)!.Value);
        return (worst.Label, worst.Air.Breakage!);
    }
}
