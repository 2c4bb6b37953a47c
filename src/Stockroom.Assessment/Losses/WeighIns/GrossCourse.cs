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
    private readonly double _cover;
    private readonly double _moisture;

    private GrossCourse(Trajectory content, Season season, Band<MassRate> rate, double cover, double moisture)
    {
        (_content, _season, _cover, _moisture) = (content, season, cover, moisture);
        Rate = rate;
    }

    /// <summary>Loss rate of the gross mass to be expected, moisture not counted.</summary>
    public Band<MassRate> Rate { get; }

    /// <summary>True where moisture that comes in can outweigh or hide what goes out.</summary>
    public bool TakesUp => _moisture > 0;

    /// <summary>From the day of the first weighing.</summary>
    public static GrossCourse Of(Situation atFirst, PropertyFacts facts, YearNetwork network)
    {
        var course = new LossCourse(atFirst, facts, network, weighable: true);
        var cover = Cover(atFirst, facts);
        return new GrossCourse(
            Trajectory.Follow(course, new Band<double>(1, 1, 1)).Expected, network.SeasonFrom(atFirst.AmountOn), BandMath.Sum([network.Year.Weighable, cover]), cover.Expected.KilogramsPerSecond, HygroscopicContents.TakesUp(atFirst) ? Moisture(atFirst, facts) : 0);
    }

    /// <summary>Kilograms gone a time after the first weighing.</summary>
    public double Lost(Span since, double factor, double uptake)
    {
        var effective = _season.Effective(since).Seconds * factor;
        return (_content.Start - _content.After(new Span(effective))).Kilograms + ((_cover - (uptake * _moisture)) * effective);
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
