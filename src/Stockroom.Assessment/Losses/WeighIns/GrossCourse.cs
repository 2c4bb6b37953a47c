using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses.WeighIns;

/// <summary>
/// What the balance should have seen go, by the physics: the content's course scaled by a factor on the leak, what its cover loses by the
/// same way, less the moisture that may have come in by it.
/// </summary>
internal sealed class GrossCourse
{
    private readonly Trajectory _content;
    private readonly Band<MassRate> _contentRate;
    private readonly Band<CourseTime> _times;
    private readonly Season _season;
    private readonly Band<MassRate> _coverRate;
    private readonly Season _coverSeason;
    private readonly double _moisture;

    private GrossCourse(Situation atFirst, PropertyFacts facts, YearNetwork network)
    {
        _content = Trajectory.Follow(new LossCourse(atFirst, facts, network, weighable: true), new Band<double>(1, 1, 1)).Expected;
        (_contentRate, _season) = (network.Year.Weighable, network.SeasonFrom(atFirst.AmountOn));
        var lag = WallLag.Of(atFirst, network.Year);
        CourseTime Time(BandEnd lags) => lag.Time(_season, BandEnd.Expected, lags, _contentRate.Expected);
        _times = new(Time(BandEnd.High), Time(BandEnd.Expected), Time(BandEnd.Low));
        if (CoverLoss.Of(atFirst, facts) is { } cover)
            (_coverRate, _coverSeason) = (cover.Network.Year.Weighable, cover.Network.SeasonFrom(atFirst.AmountOn));
        _moisture = HygroscopicContents.TakesUp(atFirst) ? Moisture(atFirst, facts) : 0;
    }

    /// <summary>Loss rate of the gross mass to be expected, moisture not counted.</summary>
    public Band<MassRate> Rate => BandMath.Sum([_contentRate, _coverRate]);

    /// <summary>What of it a series of so long should feel, walls that are not soaked through yet counted.</summary>
    public Band<MassRate> Felt(Span whole)
    {
        double Share(CourseTime time) => whole.Seconds > 0 ? time.Steady(whole) / whole : 1;
        return BandMath.Sum([new(_contentRate.Low * Share(_times.Low), _contentRate.Expected * Share(_times.Expected), _contentRate.High * Share(_times.High)), _coverRate]);
    }

    /// <summary>True where some wall or liner is not soaked through yet at the first weighing, and how slow it is matters.</summary>
    public bool IsBehind => _times.Low.Short.Seconds > 0;

    /// <summary>True where moisture that comes in can outweigh or hide what goes out.</summary>
    public bool TakesUp => _moisture > 0;

    /// <summary>From the day of the first weighing.</summary>
    public static GrossCourse Of(Situation atFirst, PropertyFacts facts, YearNetwork network) => new(atFirst, facts, network);

    /// <summary>Kilograms of gross mass gone a time after the first weighing.</summary>
    public double Lost(Span since, double factor, Unweighed unweighed) =>
        OfContent(since, factor, unweighed.Lag)
        + (((_coverRate.Expected.KilogramsPerSecond * _coverSeason.Effective(since).Seconds) - (unweighed.Uptake * _moisture * _season.Effective(since).Seconds)) * factor);

    /// <summary>What of it the content has lost, its cover and what it takes up left out.</summary>
    public Mass ContentLost(Span since, double factor) => new(OfContent(since, factor, BandEnd.Expected));

    private double OfContent(Span since, double factor, BandEnd lag)
    {
        var time = lag switch { BandEnd.Low => _times.High, BandEnd.High => _times.Low, _ => _times.Expected };
        return (_content.Start - _content.After(time.Effective(since) * factor)).Kilograms;
    }

    // As much water as the room's air drives in where nothing inside drives back: the loss of pure water into dry air, times the humidity.
    private static double Moisture(Situation situation, PropertyFacts facts)
    {
        var water = situation with { Content = Content.Of(facts.Catalogue["water"]), Cover = null, CoverDepth = null, Humidity = new Fraction(0), DailySwing = default };
        return LossNetwork.At(new LossState(water, facts)).Weighable.Expected.KilogramsPerSecond * situation.Humidity.Value;
    }
}
