namespace Stockroom.Screens.Shell;

/// <summary>Says when a new day begins, so that what is due follows the calendar of a program left open.</summary>
internal sealed class DayWatch : IDisposable
{
    private static readonly TimeSpan Beat = TimeSpan.FromMinutes(1);

    private readonly TimeProvider _time;
    private readonly Action _newDay;
    private readonly ITimer _timer;
    private DateOnly _day;

    public DayWatch(TimeProvider time, Action newDay)
    {
        _time = time;
        _newDay = newDay;
        _day = Today;
        _timer = time.CreateTimer(_ => Look(), null, Beat, Beat);
    }

    public void Dispose() => _timer.Dispose();

    private DateOnly Today => DateOnly.FromDateTime(_time.GetLocalNow().DateTime);

    private void Look()
    {
        DateOnly today = Today;
        if (today == _day) return;
        _day = today;
        _newDay();
    }
}
