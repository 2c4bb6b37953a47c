using Stockroom.Assessment;
using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Plots;

/// <summary>One day of a curve: what is left, with its band, in grams.</summary>
internal sealed record CurvePoint(DateOnly On, double Low, double Expected, double High);

/// <summary>What a picture of a forecast shows: the curve with its band, what was weighed, and the limits it passes.</summary>
internal sealed record ForecastCurve(
    string Title, IReadOnlyList<CurvePoint> Points, IReadOnlyList<(DateOnly On, double Grams)> Weighed, IReadOnlyList<(string Name, double Grams)> Limits, DateOnly Today)
{
    private const int Steps = 72;
    private const int LeastDays = 365;
    private const int MostDays = 60 * 365;

    /// <summary>Null where nothing can be said of what is left.</summary>
    public static ForecastCurve? Of(string title, Situation situation, Forecast forecast, PropertyFacts facts, DateOnly today, decimal? tareGrams)
    {
        if (forecast.Remaining is null)
            return null;
        var weighed = NetOf(situation, tareGrams);
        var (first, start) = forecast.Weighed is { Follows: true } followed
            ? (followed.Start.AmountOn, followed.Start.Amount.Grams)
            : (situation.AmountOn, situation.Amount.Grams);
        var days = Days(first, forecast, today, weighed);
        var points = Enumerable.Range(0, Steps + 1)
            .Select(i => first.AddDays((int)Math.Round((double)i * days / Steps)))
            .Distinct()
            .Select(day => (day, left: Forecast.Of(situation with { Air = null, RoomAir = null }, facts, day).Remaining))
            .Where(p => p.left is not null)
            .Select(p => new CurvePoint(p.day, p.left!.Value.Low.Grams, p.left.Value.Expected.Grams, p.left.Value.High.Grams))
            .ToList();
        return new ForecastCurve(title, points, weighed, [.. forecast.Reaches.Select(r => (r.Limit, r.Left.Value * start))], today);
    }

    // To the day on which half is expected to be left, a year at least and sixty at most; not so far that what was weighed shrinks to a
    // dot; always a while beyond today.
    private static int Days(DateOnly first, Forecast forecast, DateOnly today, List<(DateOnly On, double Grams)> weighed)
    {
        var half = forecast.Reaches.Where(r => r.Left.Value < 0.6).Select(r => r.Expected).FirstOrDefault(e => e is not null);
        var wanted = half is { } day ? (day.DayNumber - first.DayNumber) * 5 / 4 : 20 * 365;
        if (weighed.Count >= 2)
            wanted = Math.Min(wanted, today.DayNumber - first.DayNumber + (10 * (weighed[^1].On.DayNumber - weighed[0].On.DayNumber)));
        wanted = Math.Max(wanted, today.DayNumber - first.DayNumber + 183);
        return Math.Clamp(wanted, LeastDays, Math.Max(MostDays, today.DayNumber - first.DayNumber + 183));
    }

    // By the tare where it is known; else against the weighing that the amount goes with.
    private static List<(DateOnly On, double Grams)> NetOf(Situation situation, decimal? tareGrams)
    {
        if (situation.Weighings.Count == 0)
            return [];
        if (tareGrams is { } tare && !situation.HasLiquidCover)
            return [.. situation.Weighings.Select(w => (w.On, w.Gross.Grams - (double)tare))];
        var reference = situation.Weighings.LastOrDefault(w => w.On <= situation.AmountOn) ?? situation.Weighings[0];
        return [.. situation.Weighings.Select(w => (w.On, situation.Amount.Grams + w.Gross.Grams - reference.Gross.Grams))];
    }
}
