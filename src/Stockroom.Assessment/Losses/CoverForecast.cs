using Stockroom.Chemistry.Catalogue;
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
/// A cover is stock too. A volatile cover (water) goes by the same ways as a content; an oil goes hardly at all by itself, and its
/// measured depths tell. The least depth is half of the first unless the keeper sets one.
/// </summary>
/// <remarks>Depth: expected today with its band. Fails: first day at the least depth, earliest, expected and latest; null beyond 500 years or not falling.</remarks>
public sealed record CoverForecast(
    string Cover, CoverVerdict Verdict, Band<Length>? Depth, Length? LeastDepth, DateOnly? FailsLow, DateOnly? FailsExpected, DateOnly? FailsHigh, string Because, Provenance Source)
{
    private const double SoonDays = 30;
    private const double HorizonDays = 500 * 365.25;

    /// <summary>Null where there is no liquid cover.</summary>
    public static CoverForecast? Of(Situation situation, PropertyFacts facts, DateOnly on, Length? leastDepth = null)
    {
        if (situation.Cover is not { Kind: CoverKind.Liquid, Content: { } contentName } cover)
            return null;
        var readings = Readings(situation);
        if (readings.Count == 0)
            return new CoverForecast(cover.Name, CoverVerdict.Unknown, null, leastDepth, null, null, null, $"nobody has measured the depth of the {cover.Name}", cover.Provenance);
        var least = leastDepth ?? (readings[0].Depth / 2);
        var last = readings[^1];
        var fall = Fall(situation, facts, contentName, readings);
        var days = on.DayNumber - last.On.DayNumber;
        var depth = new Band<Length>(After(last.Depth, fall.High, days), After(last.Depth, fall.Expected, days), After(last.Depth, fall.Low, days));
        var (early, expected, late) = (Day(last, least, fall.High), Day(last, least, fall.Expected), Day(last, least, fall.Low));
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

    // Metres a day: measured where two readings lie far enough apart and fall, else computed by evaporation.
    private static FallOfLevel Fall(Situation situation, PropertyFacts facts, string contentName, List<DepthReading> readings)
    {
        var computed = Evaporation(situation, facts, contentName);
        var since = LastRise(readings);
        var (first, last) = (readings[since], readings[^1]);
        var days = last.On.DayNumber - first.On.DayNumber;
        if (days < 7 || last.Depth >= first.Depth)
            return computed;
        var measured = (first.Depth.Metres - last.Depth.Metres) / days;

        // A depth is read to about half a millimetre.
        var reach = 0.5e-3 * Math.Sqrt(2) / days;
        return new FallOfLevel(Math.Max(0, measured - reach), measured, measured + reach, $"it fell {(first.Depth - last.Depth).Millimetres:0.#} mm in {days} days");
    }

    private static int LastRise(List<DepthReading> readings)
    {
        var since = 0;
        for (var i = 1; i < readings.Count; i++)
        {
            if (readings[i].Depth > readings[i - 1].Depth)
                since = i;
        }

        return since;
    }

    private static FallOfLevel Evaporation(Situation situation, PropertyFacts facts, string contentName)
    {
        if (facts.Catalogue.Resolve(contentName).Content is not { } content)
            return new FallOfLevel(0, 0, 0, $"{contentName} is not in the catalogue");
        var density = content.Density ?? (content.Pure is { } pure ? facts.LiquidDensity(pure, situation.Temperature).Value : null) ?? new Density(1000);
        var depth = situation.CoverDepth ?? new Length(0.01);
        var amount = new Mass(density.KilogramsPerCubicMetre * depth.Metres * situation.Vessel.CrossSection.SquareMetres);
        var asContent = situation with { Content = content, Amount = amount, Cover = null, CoverDepth = null };
        var network = LossNetwork.At(new LossState(asContent, facts));
        var toDepth = 86400 / (density.KilogramsPerCubicMetre * situation.Vessel.CrossSection.SquareMetres);
        var rate = network.Total;
        var words = rate.Expected.KilogramsPerSecond > 0 ? $"it evaporates by about {rate.Expected.GramsPerYear:0.##} g a year ({rate.Low.GramsPerYear:0.##} to {rate.High.GramsPerYear:0.##})" : network.IsKnown ? "it does not evaporate measurably" : "what it loses by itself is not in the tables: measure it";
        return new FallOfLevel(rate.Low.KilogramsPerSecond * toDepth, rate.Expected.KilogramsPerSecond * toDepth, rate.High.KilogramsPerSecond * toDepth, words);
    }

    private static Length After(Length depth, double metresPerDay, int days) => new(Math.Max(0, depth.Metres - (metresPerDay * Math.Max(0, days))));

    private static DateOnly? Day(DepthReading last, Length least, double metresPerDay)
    {
        if (last.Depth <= least)
            return last.On;
        var days = metresPerDay > 0 ? (last.Depth - least).Metres / metresPerDay : double.PositiveInfinity;
        return days > HorizonDays ? null : ForecastBuilder.Date(last.On, Span.FromDays(days));
    }

    private sealed record FallOfLevel(double Low, double Expected, double High, string Because);
}
