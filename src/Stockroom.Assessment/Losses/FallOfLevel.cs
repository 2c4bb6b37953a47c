using Stockroom.Assessment.Losses.WeighIns;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// How fast the level of a cover falls, in metres for each day of even time (see <see cref="Losses.Season"/>), and how that is known: by depths
/// read, by weighings where what goes is the cover, or by its evaporation as computed. Of what was measured the narrower band is taken.
/// </summary>
internal sealed record FallOfLevel(double Low, double Expected, double High, CoverLoss? Loss, string Because)
{
    // Share of what a balance sees go that must be the cover's before its weighings tell of the cover.
    private const double Mostly = 0.9;

    // A depth is read to about half a millimetre, and two of a week's distance or less say nothing.
    private const double ReadTo = 0.5e-3;
    private const double LeastDays = 7;

    public static FallOfLevel Of(Situation situation, CoverLoss? loss, Evidence? evidence, IReadOnlyList<DepthReading> readings)
    {
        var (measured, weighed) = (Measured(loss, readings), Weighed(situation, loss, evidence));
        if (measured is not null && (weighed is null || measured.High - measured.Low <= weighed.High - weighed.Low))
            return measured;
        return weighed ?? Computed(situation, loss, evidence);
    }

    /// <summary>The season of the cover's own loss, seen from a day on; none for what does not evaporate.</summary>
    public Season SeasonFrom(DateOnly day) => Season(Loss, day);

    private static Season Season(CoverLoss? loss, DateOnly day) => loss is null ? default : loss.Network.SeasonFrom(day);

    private static FallOfLevel? Measured(CoverLoss? loss, IReadOnlyList<DepthReading> readings)
    {
        var (first, last) = (readings[LastRise(readings)], readings[^1]);
        var days = last.On.DayNumber - first.On.DayNumber;
        if (days < LeastDays || last.Depth >= first.Depth)
            return null;
        var even = Season(loss, first.On).Effective(Span.FromDays(days)).Days;
        var measured = (first.Depth - last.Depth).Metres / even;
        var reach = ReadTo * Math.Sqrt(2) / even;
        return new FallOfLevel(
            Math.Max(0, measured - reach), measured, measured + reach, loss, $"it fell {(first.Depth - last.Depth).Millimetres:0.#} mm in {days} days, by its depth as measured");
    }

    private static int LastRise(IReadOnlyList<DepthReading> readings)
    {
        var since = 0;
        for (var i = 1; i < readings.Count; i++)
        {
            if (readings[i].Depth > readings[i - 1].Depth)
                since = i;
        }

        return since;
    }

    // One closure lets content and cover through; where next to all that goes is the cover, the factor weighed is the cover's.
    private static FallOfLevel? Weighed(Situation situation, CoverLoss? loss, Evidence? evidence)
    {
        if (loss is null || !IsTheCover(loss, evidence))
            return null;
        var own = loss.Network.Year.Weighable.Expected;
        var rate = evidence!.Posterior.Factor.Select(f => own * f);
        var physics = loss.Rate;
        return Of(situation, loss, rate, $"by {evidence.Measured.Weighings} weighings it evaporates by {Words(rate)} g a year; what goes from this vessel is the cover (the physics alone gives {Words(physics)})");
    }

    private static FallOfLevel Computed(Situation situation, CoverLoss? loss, Evidence? evidence)
    {
        if (loss is null)
            return new FallOfLevel(0, 0, 0, null, $"{situation.Cover?.Content} is not in the catalogue");
        var words = loss.Rate.Expected.KilogramsPerSecond > 0 ? $"it evaporates by about {Words(loss.Rate)} g a year by the physics, not yet measured{Weighings(evidence)}"
            : loss.Network.Year.IsKnown ? "it does not evaporate measurably" : "what it loses by itself is not in the tables: measure it";
        return Of(situation, loss, loss.Rate, words);
    }

    private static string Weighings(Evidence? evidence) => evidence is null ? "" : "; the weighings do not tell its loss from the content's";

    private static bool IsTheCover(CoverLoss loss, Evidence? evidence) => evidence is { Scales: true }
        && evidence.Unit.KilogramsPerSecond > 0 && loss.Network.Year.Weighable.Expected / evidence.Unit >= Mostly;

    private static FallOfLevel Of(Situation situation, CoverLoss loss, Band<MassRate> rate, string because)
    {
        var toDepth = 86400 / (loss.Density.KilogramsPerCubicMetre * situation.Vessel.CrossSection.SquareMetres);
        return new FallOfLevel(
            rate.Low.KilogramsPerSecond * toDepth, rate.Expected.KilogramsPerSecond * toDepth, rate.High.KilogramsPerSecond * toDepth, loss, because);
    }

    private static string Words(Band<MassRate> rate) => $"{rate.Expected.GramsPerYear:0.##} ({rate.Low.GramsPerYear:0.##} to {rate.High.GramsPerYear:0.##})";
}
