using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// What a wall still holds back in the first lags after filling: a clean sheet lets nothing through at first and is short, for good, of its
/// steady rate times its lag. A course is followed as if every way were steady, and its time is shortened by each sheet's share of the whole:
/// exact while the rates stay what they were at the start, which lags of days in losses of months nearly are.
/// What has gone into the wall and not come out counts as left, as it does for a balance.
/// A cover or packing in series would lengthen the lag; that is not counted, so that no less is lost than is true.
/// </summary>
/// <remarks>None where the day of filling is not known: the wall is taken as soaked through. D is taken at the place's mean temperature.</remarks>
internal sealed class WallLag
{
    private static readonly WallLag None = new([], default);

    private readonly List<Sheet> _sheets;
    private readonly Span _before;

    private WallLag(List<Sheet> sheets, Span before) => (_sheets, _before) = (sheets, before);

    // The steady rate of one part through one sheet, barriers counted, and the sheet's lag, shortest to longest.
    private readonly record struct Sheet(Band<MassRate> Rate, Band<Span> Lag);

    /// <summary>For a course that starts on the day of the situation's amount.</summary>
    public static WallLag Of(Situation situation, LossNetwork year)
    {
        if (situation.InVesselSince is not { } since)
            return None;
        var before = Span.FromDays(Math.Max(0, situation.AmountOn.DayNumber - since.DayNumber));
        List<Sheet>? sheets = null;
        foreach (var path in year.Paths)
        {
            if (path.Leaves.Count == 0 || !path.Finding.HasLags)
                continue;
            foreach (var lag in path.Finding.Lags)
            {
                if (lag.Lag is { } known && path.Leaves.FirstOrDefault(l => ReferenceEquals(l.Part, lag.Part)) is { } leaving)
                    (sheets ??= []).Add(new Sheet(leaving.Rate, known));
            }
        }

        return sheets is null ? None : new WallLag(sheets, before);
    }

    /// <summary>The time of a course at one end of the rates' band and one of the lags'.</summary>
    /// <param name="season">Of the course's start.</param>
    /// <param name="rates">End of the rates.</param>
    /// <param name="lags">End of the lags.</param>
    /// <param name="whole">The rate with which the course starts, sheets and all else.</param>
    /// <param name="pace">How many times faster than their band the sheets let through.</param>
    public CourseTime Time(Season season, BandEnd rates, BandEnd lags, MassRate whole, double pace = 1)
    {
        if (_sheets.Count == 0 || whole.KilogramsPerSecond <= 0)
            return new CourseTime(season);
        var shares = new List<(double, Span)>(_sheets.Count);
        foreach (var sheet in _sheets)
            shares.Add((pace * (At(sheet.Rate, rates) / whole), At(sheet.Lag, lags)));
        return new CourseTime(season, shares, _before);
    }

    /// <summary>Each end of a forecast by the physics: little is lost through slow walls, much through quick ones.</summary>
    public Band<CourseTime> Times(Season season, Band<MassRate> whole) => new(
        Time(season, BandEnd.Low, BandEnd.High, whole.Low), Time(season, BandEnd.Expected, BandEnd.Expected, whole.Expected), Time(season, BandEnd.High, BandEnd.Low, whole.High));

    private static T At<T>(Band<T> band, BandEnd end) => end switch
    {
        BandEnd.Low => band.Low,
        BandEnd.High => band.High,
        _ => band.Expected,
    };
}
