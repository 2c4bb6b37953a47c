using Stockroom.Assessment.Losses.WeighIns;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Losses;

/// <summary>How a cover stands.</summary>
public enum CoverVerdict
{
    /// <summary>Deep enough for now.</summary>
    Sound = 0,

    /// <summary>At or below the least depth, or below it soon.</summary>
    Low,

    /// <summary>Nothing measured and nothing that could be computed.</summary>
    Unknown,
}

/// <summary>
/// A cover is stock too. A volatile cover (water) goes by the same ways as a content, with season and day; an oil goes hardly at all by
/// itself, and its measured depths tell; what goes from over a content that stays, the balance shows. The least depth is half of the first unless the keeper sets one.
/// </summary>
/// <remarks>Depth: expected today with its band. Fails: first day at the least depth, earliest, expected and latest; null beyond 500 years or not falling.</remarks>
public sealed record CoverForecast(
    string Cover, CoverVerdict Verdict, Band<Length>? Depth, Length? LeastDepth, DateOnly? FailsLow, DateOnly? FailsExpected, DateOnly? FailsHigh, string Because, Provenance Source)
{
    private const double SoonDays = 30;
    private const double HorizonDays = 500 * 365.25;

    /// <summary>Null where there is no liquid cover.</summary>
    public static CoverForecast? Of(Situation situation, PropertyFacts facts, DateOnly on, Length? leastDepth = null) =>
        situation.HasLiquidCover ? Of(situation, facts, on, Evidence.Of(situation, facts, YearNetwork.Of(situation, facts)), leastDepth) : null;

    /// <summary>With what the weighings of the vessel have shown already.</summary>
    internal static CoverForecast? Of(Situation situation, PropertyFacts facts, DateOnly on, Evidence? evidence, Length? leastDepth = null)
    {
        if (situation.Cover is not { Kind: CoverKind.Liquid, Content: not null } cover)
            return null;
        var readings = Readings(situation);
        if (readings.Count == 0)
            return new CoverForecast(cover.Name, CoverVerdict.Unknown, null, leastDepth, null, null, null, $"nobody has measured the depth of the {cover.Name}", cover.Provenance);
        var least = leastDepth ?? (readings[0].Depth / 2);
        var last = readings[^1];
        var fall = FallOfLevel.Of(situation, CoverLoss.Of(situation, facts), evidence, readings);
        var season = fall.SeasonFrom(last.On);
        var days = season.Effective(Span.FromDays(Math.Max(0, on.DayNumber - last.On.DayNumber))).Days;
        var depth = new Band<Length>(After(last.Depth, fall.High, days), After(last.Depth, fall.Expected, days), After(last.Depth, fall.Low, days));
        var (early, expected, late) = (Day(last, least, fall.High, season), Day(last, least, fall.Expected, season), Day(last, least, fall.Low, season));
        var low = depth.Expected <= least || (expected is { } e && e.DayNumber - on.DayNumber <= SoonDays);
        return new CoverForecast(cover.Name, low ? CoverVerdict.Low : CoverVerdict.Sound, depth, least, early, expected, late, Words(cover, last, least, depth, fall), cover.Provenance);
    }

    private static string Words(Cover cover, DepthReading last, Length least, Band<Length> depth, FallOfLevel fall) =>
        $"{last.Depth.Millimetres:0.#} mm of {cover.Name} measured on {last.On:yyyy-MM-dd}, about {depth.Expected.Millimetres:0.#} mm now ({depth.Low.Millimetres:0.#} to {depth.High.Millimetres:0.#}); least is {least.Millimetres:0.#} mm; {fall.Because}";

    private static List<DepthReading> Readings(Situation situation)
    {
        var list = situation.CoverDepths.OrderBy(r => r.On).ToList();
        if (list.Count == 0 && situation.CoverDepth is { } depth)
            list.Add(new DepthReading(situation.AmountOn, depth));
        return list;
    }

    private static Length After(Length depth, double metresPerDay, double evenDays) => new(Math.Max(0, depth.Metres - (metresPerDay * evenDays)));

    private static DateOnly? Day(DepthReading last, Length least, double metresPerDay, Season season)
    {
        if (last.Depth <= least)
            return last.On;
        var days = metresPerDay > 0 ? (last.Depth - least).Metres / metresPerDay : double.PositiveInfinity;
        return days > HorizonDays ? null : ForecastBuilder.Date(last.On, season.Calendar(Span.FromDays(days)));
    }
}
