using System.Runtime.InteropServices;

namespace Stockroom.Screens.Shell;

/// <summary>
/// Ends the session on SIGTERM, SIGINT and SIGHUP and when the terminal is gone. Where the session does not end by itself
/// within some seconds, the process is ended.
/// </summary>
internal sealed class TerminalWatch : IDisposable
{
    private const int SignalBase = 128;
    private const int HangUp = 1;
    private const int StandardInput = 0;

    /// <summary>No mouse reports, no bracketed paste, plain ink, the normal screen, the cursor seen.</summary>
    private const string Restore = "\u001b[?1003l\u001b[?1015l\u001b[?1006l\u001b[?2004l\u001b[0m\u001b[?1049l\u001b[?25h";

    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(3);

    private readonly List<PosixSignalRegistration> _signals = [];
    private readonly Lock _once = new();
    private Action? _stop;
    private Timer? _beat;
    private Timer? _last;
    private volatile bool _ending;

    /// <summary>What the process should end with: 0, or 128 and the number of the signal.</summary>
    public int ExitCode { get; private set; }

    public bool TerminalIsGone { get; private set; }

    /// <summary>Whether the session has been asked to end.</summary>
    public bool IsEnding => _ending;

    /// <param name="stop">Asks the session to end; called from another thread, at most once.</param>
    public void Start(Action stop)
    {
        _stop = stop;
        Register(PosixSignal.SIGTERM, 15);
        Register(PosixSignal.SIGINT, 2);
        Register(PosixSignal.SIGHUP, HangUp);
        if (!OperatingSystem.IsWindows()) _beat = new Timer(_ => Look(), null, Beat, Beat);
    }

    public void Dispose()
    {
        foreach (PosixSignalRegistration signal in _signals) signal.Dispose();
        _beat?.Dispose();
        _last?.Dispose();
    }

    private void Register(PosixSignal signal, int number) => _signals.Add(PosixSignalRegistration.Create(signal, context =>
    {
        context.Cancel = true;
        if (number == HangUp && !IsTerminal()) TerminalIsGone = true;
        End(SignalBase + number);
    }));

    /// <summary>A terminal that was hung up no longer answers as one.</summary>
    private void Look()
    {
        if (IsTerminal()) return;
        TerminalIsGone = true;
        End(SignalBase + HangUp);
    }

    private void End(int exitCode)
    {
        lock (_once)
        {
            if (_ending) return;
            _ending = true;
            ExitCode = exitCode;
        }

        _last = new Timer(_ => EndTheProcess(), null, Patience, Timeout.InfiniteTimeSpan);
        _stop?.Invoke();
    }

    /// <summary>The session is stuck: leave the terminal usable all the same. Its line settings are restored at exit.</summary>
    private void EndTheProcess()
    {
        if (!TerminalIsGone) Console.Out.Write(Restore);
        Environment.Exit(ExitCode);
    }

    private static bool IsTerminal() => OperatingSystem.IsWindows() || isatty(StandardInput) == 1;

    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    [DllImport("libc", EntryPoint = "isatty")]
    private static extern int isatty(int descriptor);
}
