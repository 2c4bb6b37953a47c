using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Vessels;

/// <summary>Whether a fill may stand in a flame-sealed ampoule.</summary>
public enum FillVerdict
{
    Sound = 0,
    Marginal,
    Unsafe,

    /// <summary>Contents that make gas are not sealed at any fill.</summary>
    NeverSeal,
}

/// <summary>
/// Pressure and room in a flame-sealed ampoule. Pressures are absolute, strength is a difference across the wall. The liquid
/// expands by its density law, the trapped gas is squeezed into what is left, the vapour stands at saturation; above the critical
/// temperature all of it is a gas by the gas law.
/// </summary>
public sealed record AmpouleFill
{
    private static readonly Temperature AssumedWarmest = Temperature.FromCelsius(40);

    /// <summary>Null where the pressure is not known.</summary>
    public required FillVerdict? Verdict { get; init; }

    public Volume? Liquid { get; init; }

    /// <summary>Room above the liquid at the usual temperature.</summary>
    public Fraction? Ullage { get; init; }

    /// <summary>Where the liquid alone fills the glass; null where that lies above the critical point or is not known.</summary>
    public Temperature? LiquidFull { get; init; }

    public Pressure? AtMean { get; init; }

    /// <summary>Null too where the liquid fills the glass before: no pressure can be stated for what then bursts.</summary>
    public Pressure? AtWarmest { get; init; }

    public required Band<Pressure> Strength { get; init; }

    /// <summary>Strength over the pressure across the wall at the warmest.</summary>
    public Band<Fraction>? Margin { get; init; }

    /// <summary>The most of the same content that would be sound in the same tube; null where the fill is, or none would be.</summary>
    public Mass? SoundFill { get; init; }

    /// <summary>Reasons, the one that settles the verdict first.</summary>
    public required IReadOnlyList<string> Because { get; init; }

    /// <summary>
    /// True where pressure or heat within reach could break the glass; false for a fill that only breaks the filling rule, which
    /// matters before sealing more than after.
    /// </summary>
    public bool IsNearBursting => Margin is { Expected.Value: < AmpouleJudge.SoundMargin } || LiquidFull < FillingRatio.NotFullAt;

    public static AmpouleFill Of(AmpouleQuestion question, PropertyFacts facts) => AmpouleJudge.Judge(question, facts);

    public static AmpouleFill Of(Content content, Mass mass, Ampoule ampoule, Temperature mean, Temperature warmest, PropertyFacts facts) => Of(
        new AmpouleQuestion { Content = content, Fill = mass, Ampoule = ampoule, At = mean, Warmest = warmest, Coldest = Lower(mean, Temperature.FromCelsius(5)) }, facts);

    /// <summary>
    /// Of a flame-sealed vessel as it stands, with the gas of its cover sealed in as booked, else air at one atmosphere and 20 degrees C, which is
    /// said; null for any other closure. That gas stays a gas: what of it dissolves in the content or is used up by it is not taken off.
    /// </summary>
    public static AmpouleFill? Of(Situation situation, PropertyFacts facts)
    {
        if (situation.Closure.Mechanism != ClosureMechanism.Fused)
            return null;
        var question = Ask(situation);
        var fill = Of(question, facts);
        var assumed = new List<string>(2);
        if (fill.Verdict != FillVerdict.NeverSeal && Unsaid(situation) is { } unsaid)
            assumed.Add(unsaid);
        if (situation.Warmest is null)
            assumed.Add($"the warmest of the place is not known; {question.Warmest.Celsius:0} degrees C assumed");
        return assumed.Count > 0 ? fill with { Because = [.. fill.Because, .. assumed] } : fill;
    }

    /// <summary>Why a flame-sealed vessel ought not to be one as it stands; null where it may, or cannot be judged, or has another closure.</summary>
    public static string? Fault(Situation situation, PropertyFacts facts) => situation.Closure.Mechanism != ClosureMechanism.Fused ? null
        : AmpouleJudge.Verdict(Ask(situation), facts) switch
        {
            { Verdict: FillVerdict.NeverSeal, Because: [var why, ..] } => $"never seal; {why}",
            { Verdict: FillVerdict.Unsafe, Because: [var why, ..] } => $"unsafe; {why}",
            _ => null,
        };

    private static AmpouleQuestion Ask(Situation situation) => new()
    {
        Content = situation.Content,
        Fill = situation.Amount,
        Ampoule = Ampoule.Of(situation),
        At = situation.Temperature,
        Warmest = situation.Warmest ?? new Temperature(Math.Max(AssumedWarmest.Kelvin, situation.Temperature.Kelvin + situation.DailySwing.Kelvins)),
        Coldest = situation.Coldest ?? Lower(situation.Temperature, Temperature.FromCelsius(5)),
    };

    // What of the sealing nobody booked.
    private static string? Unsaid(Situation situation) => (situation.SealedGas, situation.SealedGasAt) switch
    {
        (null, null) => "how it was sealed is not booked; one atmosphere and 20 degrees C assumed",
        (null, _) => "the pressure it was sealed at is not booked; one atmosphere assumed",
        ({ Pascals: > 0 }, null) => "the temperature it was sealed at is not booked; 20 degrees C assumed",
        _ => null,
    };

    private static Temperature Lower(Temperature a, Temperature b) => a < b ? a : b;
}
