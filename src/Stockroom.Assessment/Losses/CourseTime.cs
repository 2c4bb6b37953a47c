using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// How a course's even time runs on the calendar: with the season, and behind it by what walls and liners are still short of. Both run from
/// the start of the course. What a sheet is short of it is short of at the start, and so in that season.
/// </summary>
internal readonly struct CourseTime
{
    // Less than an hour in all is no lag.
    private const double Least = 3600;

    // Within a minute of the lag nothing is left to come.
    private const double Nearly = 60;

    private readonly Season _season;
    private readonly List<(double Share, Span Lag)>? _sheets;
    private readonly Span _before;
    private readonly double _ahead;

    public CourseTime(Season season) => _season = season;

    /// <summary>With sheets, each by its share of the whole rate and its lag, that were wetted so long before the start.</summary>
    public CourseTime(Season season, List<(double Share, Span Lag)> sheets, Span before)
    {
        _season = season;
        var ahead = 0.0;
        foreach (var (share, lag) in sheets)
            ahead += share * (lag - Permeation.StillMissing(before, lag)).Seconds;
        if (ahead >= Least)
            (_sheets, _before, _ahead) = (sheets, before, ahead);
    }

    /// <summary>Time at the steady rate that the sheets will yet be short of, counted from the start; no time where their lags lie behind.</summary>
    public Span Short => new(_ahead);

    /// <summary>Even time gone by after so much time on the calendar, but for the season.</summary>
    public Span Steady(Span elapsed) => _sheets is null ? elapsed : elapsed - Missing(elapsed);

    /// <summary>Even time gone by after so much time on the calendar.</summary>
    public Span Effective(Span elapsed) => _sheets is null ? _season.Effective(elapsed) : _season.Effective(elapsed) - _season.Effective(Missing(elapsed));

    /// <summary>The time on the calendar after which so much even time has gone by.</summary>
    public Span Calendar(Span effective)
    {
        if (_sheets is null)
            return _season.Calendar(effective);
        var latest = _season.Calendar(effective + _season.Effective(Short));
        if (effective.Seconds <= 0 || Missing(latest).Seconds > _ahead - Nearly)
            return effective.Seconds <= 0 ? default : latest;
        var (low, high) = (0.0, latest.Seconds);
        for (var i = 0; i < 60 && high - low > Nearly; i++)
        {
            var middle = (low + high) / 2;
            if (Effective(new Span(middle)) < effective)
                low = middle;
            else
                high = middle;
        }

        return new Span((low + high) / 2);
    }

    private Span Missing(Span elapsed)
    {
        var sum = 0.0;
        if (elapsed.Seconds > 0)
        {
            foreach (var (share, lag) in _sheets!)
                sum += share * (Permeation.StillMissing(_before + elapsed, lag) - Permeation.StillMissing(_before, lag)).Seconds;
        }

        return new Span(sum);
    }
}
