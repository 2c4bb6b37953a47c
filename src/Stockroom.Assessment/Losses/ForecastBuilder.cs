using Stockroom.Assessment.Losses.WeighIns;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>Puts a forecast together.</summary>
internal static class ForecastBuilder
{
    private static readonly (string Name, Fraction Left)[] Limits =
        [("90 % left", new(0.9)), ("50 % left", new(0.5)), ("10 % left", new(0.1))];

    public static Forecast Build(Situation situation, PropertyFacts facts, DateOnly on)
    {
        var network = YearNetwork.Of(situation, facts);
        var year = network.Year;
        var weighed = WeighedForecast.Of(situation, Evidence.Of(situation, facts, network), year);
        var forecast = new Forecast
        {
            On = on,
            LossRate = null,
            IsComplete = (year.IsComplete || weighed?.Follows == true) && Overfull.Why(situation, facts) is null,
            Paths = [.. year.Paths.Select(p => Show(p, year.Total.Expected, weighed))],
            Remaining = null,
            Reaches = [],
            Strength = StrengthForecasts.Of(situation, facts, on),
            Cover = CoverForecast.Of(situation, facts, on),
            Air = AirForecasts.Of(situation, facts, default),
            Weighed = weighed,
            Warnings = [.. ForecastWarnings.Of(situation, facts, year, weighed)],
        };
        if (weighed?.Follows == true)
            return Followed(forecast, weighed.Start, facts, network, weighed);
        return year.IsKnown ? ByPhysics(forecast, situation, facts, network) : forecast;
    }

    private static Forecast ByPhysics(Forecast forecast, Situation situation, PropertyFacts facts, YearNetwork network)
    {
        var course = new LossCourse(situation, facts, network);
        return WithCourses(
            forecast with { LossRate = network.Year.Total, Air = AirForecasts.Of(situation, facts, network.Year.Total) },
            situation,
            network.SeasonFrom(situation.AmountOn),
            Trajectory.Follow(course));
    }

    private static Forecast Followed(Forecast forecast, Situation start, PropertyFacts facts, YearNetwork network, WeighedForecast weighed)
    {
        var courses = weighed.Evidence.Scales
            ? Trajectory.Follow(new LossCourse(start, facts, network), weighed.Evidence.Posterior.Factor)
            : weighed.Evidence.Rate.Select(r => Straight(start.Amount, r));
        var season = weighed.Evidence.Scales ? network.SeasonFrom(start.AmountOn) : default;
        return WithCourses(forecast with { LossRate = weighed.Rate, Air = AirForecasts.Of(start, facts, weighed.Rate) }, start, season, courses);
    }

    // Nothing is known of the way out: as much every day, as it was weighed.
    private static Trajectory Straight(Mass start, MassRate rate)
    {
        var r = Math.Max(0, rate.KilogramsPerSecond);
        List<Trajectory.Point> points = [new(0, start.Kilograms, r)];
        if (r > 0)
            points.Add(new Trajectory.Point((1 - Trajectory.StopAt) * start.Kilograms / r, Trajectory.StopAt * start.Kilograms, r));
        return new Trajectory(points);
    }

    private static Forecast WithCourses(Forecast forecast, Situation start, Season season, Band<Trajectory> courses)
    {
        var elapsed = season.Effective(Span.FromDays(Math.Max(0, forecast.On.DayNumber - start.AmountOn.DayNumber)));
        DateOnly? Day(Trajectory course, Fraction left) => Date(start.AmountOn, course.Reaches(left) is { } s ? season.Calendar(s) : null);
        return forecast with
        {
            Remaining = new Band<Mass>(courses.High.After(elapsed), courses.Expected.After(elapsed), courses.Low.After(elapsed)),
            Reaches = [.. Limits.Select(l => new Reach(l.Name, l.Left, Day(courses.High, l.Left), Day(courses.Expected, l.Left), Day(courses.Low, l.Left)))],
        };
    }

    /// <summary>A day so long after another; null for never.</summary>
    internal static DateOnly? Date(DateOnly from, Span? after) =>
        after is { } span && span.Days < DateOnly.MaxValue.DayNumber - from.DayNumber - 1 ? from.AddDays((int)Math.Floor(span.Days)) : null;

    // With weighings, every way out that a balance can show is shown in the measure of what was weighed.
    private static PathForecast Show(LossNetwork.PathRate path, MassRate total, WeighedForecast? weighed)
    {
        var counts = path.Finding.Role != PathRole.Strength && total.KilogramsPerSecond > 0;
        var rate = weighed is { Follows: true, Evidence.Scales: true } && path.Finding.Role is PathRole.Leak or PathRole.Direct
            ? new Band<MassRate>(path.Rate.Expected, path.Rate.Expected, path.Rate.Expected).Scaled(weighed?.Evidence.Posterior.Factor)
            : path.Rate;
        return new PathForecast(
            path.Path, path.Finding.Verdict, path.Finding.Role, new Fraction(counts ? path.Rate.Expected / total : 0), rate, path.Finding.Because, path.Finding.Source);
    }

    private static Band<MassRate> Scaled(this Band<MassRate> rate, Band<double>? factor) =>
        factor is { } f ? new Band<MassRate>(rate.Low * f.Low, rate.Expected * f.Expected, rate.High * f.High) : rate;
}
