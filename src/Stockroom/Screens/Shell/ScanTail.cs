namespace Stockroom.Screens.Shell;

/// <summary>
/// A label's code is followed by plain words for people. A scanner types those too, faster than a hand can: they are
/// swallowed until it pauses.
/// </summary>
internal sealed class ScanTail(TimeProvider time)
{
    /// <summary>Longest pause between two characters of one scan. A scanner takes a few milliseconds, a fast typist 100.</summary>
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(60);

    private long? _last;

    /// <summary>A code has just been read.</summary>
    public void Begin() => _last = time.GetTimestamp();

    /// <summary>Whether a character that comes now is still part of the scan.</summary>
    public bool Swallows()
    {
        if (_last is not { } last) return false;
        long now = time.GetTimestamp();
        bool goesOn = time.GetElapsedTime(last, now) <= Pause;
        _last = goesOn ? now : null;
        return goesOn;
    }
}
