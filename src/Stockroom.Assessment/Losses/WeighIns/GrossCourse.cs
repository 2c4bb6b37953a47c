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
    private readonly Season _season;
    private readonly Band<CourseTime> _times;
    private readonly double _cover;
    private readonly double _moisture;

    private GrossCourse(Trajectory content, Season season, Band<CourseTime> times, Band<MassRate> rate, double cover, double moisture)
    {
        (_content, _season, _times, _cover, _moisture) = (content, season, times, cover, moisture);
        Rate = rate;
    }

    /// <summary>Loss rate of the gross mass to be expected, moisture not counted.</summary>
    public Band<MassRate> Rate { get; }

    /// <summary>What of it a series of so long should feel, walls that are not soaked through yet counted.</summary>
    public Band<MassRate> Felt(Span whole)
    {
        double Share(CourseTime time) => whole.Seconds > 0 ? time.Steady(whole) / whole : 1;
        return IsBehind ? new(Rate.Low * Share(_times.Low), Rate.Expected * Share(_times.Expected), Rate.High * Share(_times.High)) : Rate;
    }

    /// <summary>True where some wall or liner is not soaked through yet at the first weighing, and how slow it is matters.</summary>
    public bool IsBehind => _times.Low.Short.Seconds > 0;

    /// <summary>True where moisture that comes in can outweigh or hide what goes out.</summary>
    public bool TakesUp => _moisture > 0;

    /// <summary>From the day of the first weighing.</summary>
    public static GrossCourse Of(Situation atFirst, PropertyFacts facts, YearNetwork network)
    {
        var course = new LossCourse(atFirst, facts, network, weighable: true);
        var cover = Cover(atFirst, facts);
        var (season, lag, whole) = (network.SeasonFrom(atFirst.AmountOn), WallLag.Of(atFirst, network.Year), network.Year.Weighable.Expected);
        CourseTime Time(BandEnd lags) => lag.Time(season, BandEnd.Expected, lags, whole);
        return new GrossCourse(
            Trajectory.Follow(course, new Band<double>(1, 1, 1)).Expected, season, new(Time(BandEnd.High), Time(BandEnd.Expected), Time(BandEnd.Low)), BandMath.Sum([network.Year.Weighable, cover]), cover.Expected.KilogramsPerSecond, HygroscopicContents.TakesUp(atFirst) ? Moisture(atFirst, facts) : 0);
    }

    /// <summary>Kilograms gone a time after the first weighing.</summary>
    public double Lost(Span since, double factor, Unweighed unweighed)
    {
        var time = unweighed.Lag switch { BandEnd.Low => _times.High, BandEnd.High => _times.Low, _ => _times.Expected };
        var gone = _content.Start - _content.After(time.Effective(since) * factor);
        return gone.Kilograms + ((_cover - (unweighed.Uptake * _moisture)) * _season.Effective(since).Seconds * factor);
    }

    // The gross mass falls by what the cover loses too.
    private static Band<MassRate> Cover(Situation situation, PropertyFacts facts)
    {
        if (situation.Cover is not { Kind: CoverKind.Liquid, Content: { } name } || facts.Catalogue.Resolve(name).Content is not { } cover)
            return default;
        return LossNetwork.At(new LossState(situation with { Content = cover, Cover = null, CoverDepth = null }, facts)).Weighable;
    }

    // As much water as the room's air drives in where nothing inside drives back: the loss of pure water into dry air, times the humidity.
    private static double Moisture(Situation situation, PropertyFacts facts)
    {
        var water = situation with { Content = Content.Of(facts.Catalogue["water"]), Cover = null, CoverDepth = null, Humidity = new Fraction(0), DailySwing = default };
        return LossNetwork.At(new LossState(water, facts)).Weighable.Expected.KilogramsPerSecond * situation.Humidity.Value;
    }
}
