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
    private readonly LossCourse _course;
    private readonly Content _start;
    private readonly Trajectory _content;
    private readonly Band<MassRate> _contentRate;
    private readonly Band<CourseTime> _times;
    private readonly Season _season;
    private readonly Band<MassRate> _coverRate;
    private readonly Season _coverSeason;
    private readonly Moisture _moisture;

    private GrossCourse(Situation atFirst, PropertyFacts facts, YearNetwork network)
    {
        _course = new LossCourse(atFirst, facts, network, weighable: true);
        _start = atFirst.Content;
        _content = Trajectory.Follow(_course, new Band<double>(1, 1, 1)).Expected;
        (_contentRate, _season) = (network.Year.Weighable, network.SeasonFrom(atFirst.AmountOn));
        var lag = WallLag.Of(atFirst, network.Year);
        CourseTime Time(BandEnd lags) => lag.Time(_season, BandEnd.Expected, lags, _contentRate.Expected);
        _times = new(Time(BandEnd.High), Time(BandEnd.Expected), Time(BandEnd.Low));
        if (CoverLoss.Of(atFirst, facts) is { } cover)
            (_coverRate, _coverSeason) = (cover.Network.Year.Weighable, cover.Network.SeasonFrom(atFirst.AmountOn));
        _moisture = Moisture.Of(atFirst, facts, network);
    }

    /// <summary>Loss rate of the gross mass to be expected, moisture not counted.</summary>
    public Band<MassRate> Rate => BandMath.Sum([_contentRate, _coverRate]);

    /// <summary>What of it a series of so long should feel, walls that are not soaked through yet counted.</summary>
    public Band<MassRate> Felt(Span whole)
    {
        double Share(CourseTime time) => whole.Seconds > 0 ? time.Steady(whole) / whole : 1;
        return BandMath.Sum([new(_contentRate.Low * Share(_times.Low), _contentRate.Expected * Share(_times.Expected), _contentRate.High * Share(_times.High)), _coverRate]);
    }

    /// <summary>True where moisture that comes in can outweigh or hide what goes out.</summary>
    public bool TakesUp => _moisture.TakesUp;

    /// <summary>All that weighings cannot tell from a leak: the moisture, and walls that are not soaked through yet at the first weighing.</summary>
    public IReadOnlyList<Unweighed> Unweighed => WeighIns.Unweighed.All(_moisture.Shares, isBehind: _times.Low.Short.Seconds > 0);

    /// <summary>From the day of the first weighing.</summary>
    public static GrossCourse Of(Situation atFirst, PropertyFacts facts, YearNetwork network) => new(atFirst, facts, network);

    /// <summary>The even time of each way out a time after the first weighing.</summary>
    public EvenTimes Even(Span since, BandEnd lag) => new(Content(lag).Effective(since).Seconds, _coverSeason.Effective(since).Seconds, _season.Effective(since).Seconds);

    /// <summary>Kilograms of gross mass gone by even times that were counted as often as the leak was wider than expected.</summary>
    public double Lost(EvenTimes paced, double uptake) =>
        OfContent(paced.Content) + (_coverRate.Expected.KilogramsPerSecond * paced.Cover) - (uptake * _moisture.KilogramsPerSecond * paced.Moisture);

    /// <summary>What the content has lost a time after the first weighing, its cover and what it takes up left out.</summary>
    public Mass ContentLost(Span since, double factor) => new(OfContent(_times.Expected.Effective(since).Seconds * factor));

    /// <summary>What the content is made of a time after the first weighing, where no more than so much went.</summary>
    public Content ContentAfter(Span since, double factor, Mass mostLost) => Composition.After(_start, _course, _times.Expected.Effective(since), factor, mostLost);

    private CourseTime Content(BandEnd lag) => lag switch { BandEnd.Low => _times.High, BandEnd.High => _times.Low, _ => _times.Expected };

    private double OfContent(double seconds) => (_content.Start - _content.After(new Span(seconds))).Kilograms;
}
