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
        var evidence = Evidence.Of(situation, facts, network);
        var weighed = WeighedForecast.Of(situation, evidence, facts, network);
        var forecast = new Forecast
        {
            On = on,
            LossRate = null,
            IsComplete = ((year.IsComplete && year.Paths.All(p => p.Finding.NotCounted.Count == 0)) || weighed?.Follows == true) && Overfull.Why(situation, facts) is null,
            Paths = [.. year.Paths.Select(p => Show(p, year.Total.Expected, weighed))],
            Remaining = null,
            Reaches = [],
            Cover = CoverForecast.Of(situation, facts, on, evidence),
            Air = AirForecasts.Of(situation, facts, default, on),
            Weighed = weighed,
            Warnings = [.. ForecastWarnings.Of(situation, facts, year, weighed)],
        };
        if (weighed?.Follows == true)
            return Followed(forecast, situation, weighed.Start, facts, network, weighed);
        return year.IsKnown
            ? ByPhysics(forecast, situation, facts, network)
            : forecast with { Strength = StrengthForecasts.Of(situation, situation, facts, on, network, null) };
    }

    private static Forecast ByPhysics(Forecast forecast, Situation situation, PropertyFacts facts, YearNetwork network)
    {
        var course = new LossCourse(situation, facts, network) { Deciding = DecidingPart.Of(situation.Content, facts) };
        var courses = Trajectory.Follow(course);
        var moisture = MoistureUptake.Of(situation, facts);
        var strength = moisture is null
            ? courses
            : Trajectory.Follow(new LossCourse(situation, facts, network, moisture: moisture) { Deciding = course.Deciding });
        return WithCourses(
            forecast with
            {
                LossRate = network.Year.Total,
                Air = AirForecasts.Of(situation, facts, network.Year.Total, forecast.On),
                Strength = StrengthForecasts.Of(situation, situation, facts, forecast.On, network, strength, moisture is not null),
            },
            situation,
            WallLag.Of(situation, network.Year).Times(network.SeasonFrom(situation.AmountOn), network.Year.Total),
            courses);
    }

    private static Forecast Followed(Forecast forecast, Situation situation, Situation start, PropertyFacts facts, YearNetwork network, WeighedForecast weighed)
    {
        var deciding = DecidingPart.Of(start.Content, facts);
        Band<Trajectory> Scaled(MoistureUptake? taken) =>
            Trajectory.Follow(new LossCourse(start, facts, network, moisture: taken) { Deciding = deciding }, weighed.Evidence.Posterior.Factor);
        var scales = weighed.Evidence.Scales;
        var courses = scales ? Scaled(null) : weighed.Evidence.Rate.Select(r => Straight(start.Amount, r));
        var moisture = scales ? MoistureUptake.Of(start, facts) : null;
        var strength = moisture is null ? courses : Scaled(moisture);
        return WithCourses(
            forecast with
            {
                LossRate = weighed.Rate,
                Air = AirForecasts.Of(start, facts, weighed.Rate, forecast.On),
                Strength = StrengthForecasts.Of(situation, start, facts, forecast.On, network, strength, moisture is not null),
            },
            start,
            Times(start, network, weighed.Evidence),
            courses);
    }

    // By the expected rates at each pace; a loss that nothing explains runs evenly.
    private static Band<CourseTime> Times(Situation start, YearNetwork network, Evidence evidence)
    {
        if (!evidence.Scales)
            return Band<CourseTime>.Exactly(new CourseTime(default));
        var (lag, season) = (WallLag.Of(start, network.Year), network.SeasonFrom(start.AmountOn));
        var (weighable, total) = (network.Year.Weighable.Expected, network.Year.Total.Expected);
        CourseTime At(double pace, BandEnd lags) => lag.Time(season, BandEnd.Expected, lags, (weighable * pace) + (total - weighable), pace);
        var factor = evidence.Posterior.Factor;
        return new(At(factor.Low, BandEnd.High), At(factor.Expected, BandEnd.Expected), At(factor.High, BandEnd.Low));
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

    private static Forecast WithCourses(Forecast forecast, Situation start, Band<CourseTime> times, Band<Trajectory> courses)
    {
        var elapsed = Span.FromDays(Math.Max(0, forecast.On.DayNumber - start.AmountOn.DayNumber));
        DateOnly? Day(Trajectory course, CourseTime time, Fraction left) => Date(start.AmountOn, course.Reaches(left) is { } s ? time.Calendar(s) : null);
        return forecast with
        {
            Remaining = Widened(new Band<Mass>(courses.High.After(times.High.Effective(elapsed)), courses.Expected.After(times.Expected.Effective(elapsed)), courses.Low.After(times.Low.Effective(elapsed))), forecast.Weighed),
            Reaches = [.. Limits.Select(l => new Reach(l.Name, l.Left, Day(courses.High, times.High, l.Left), Day(courses.Expected, times.Expected, l.Left), Day(courses.Low, times.Low, l.Left)))],
            Warnings = times.Expected.Short.Days >= 1 ? [.. forecast.Warnings, Held(start, times)] : forecast.Warnings,
        };
    }

    private static string Held(Situation start, Band<CourseTime> times) =>
        $"wall and liner were not soaked through on {start.AmountOn:yyyy-MM-dd}: that puts every date off by about {times.Expected.Short.Days:0} days ({times.High.Short.Days:0.#} to {times.Low.Short.Days:0})";

    // What balance and course leave open of the start is left open of the end; the course is out by the same factor before and after.
    private static Band<Mass> Widened(Band<Mass> left, WeighedForecast? weighed)
    {
        if (weighed is not { Follows: true, Anchor: var anchor, Evidence.Posterior.Factor: var factor })
            return left;
        var readings = BandMath.EndsAt * anchor.Deviation.Kilograms;
        double Reach(Mass end, double pace) =>
            Math.Sqrt(Math.Pow(Math.Abs((end - left.Expected).Kilograms) + (anchor.ByCourse.Kilograms * Math.Abs((pace / factor.Expected) - 1)), 2) + (readings * readings));
        return new Band<Mass>(
            new Mass(Math.Max(0, left.Expected.Kilograms - Reach(left.Low, factor.High))), left.Expected, new Mass(left.Expected.Kilograms + Reach(left.High, factor.Low)));
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
