using System.Runtime.InteropServices;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace Stockroom.Screens.Shell;

/// <summary>
/// Keeps the library's loop quiet while nothing happens. It would turn 25 times a second; instead it turns quickly for a
/// moment after each key, and else sleeps until the terminal has something to read.
/// </summary>
internal sealed class IdleWait(IApplication app, TerminalWatch watch)
{
    /// <summary>Turns of the loop in the moment after a key, when they cost nothing; the library would take 25 at all times.</summary>
    public const ushort TurnsPerSecond = 200;

    private const int NapMilliseconds = 20;
    private const int LongestSleepMilliseconds = 240;
    private const int WakeForMilliseconds = 200;
    private const short ReadyToRead = 1;

    private long _awakeUntil = Environment.TickCount64 + 2000;

    /// <summary>Called before each turn of the loop.</summary>
    public void BeforeTurn()
    {
        if (OperatingSystem.IsWindows() || Environment.TickCount64 < _awakeUntil) return;
        for (int slept = 0; slept < LongestSleepMilliseconds && !watch.IsEnding; slept += NapMilliseconds)
        {
            if (!SomethingCame()) continue;
            _awakeUntil = Environment.TickCount64 + WakeForMilliseconds;
            return;
        }
    }

    /// <summary>
    /// Naps until a byte comes. The library's reader may take the byte before the nap is over, and the nap then goes on:
    /// so naps are short, and its queue is looked at as well.
    /// </summary>
    private bool SomethingCame()
    {
        if (app.Driver?.GetInputProcessor() is InputProcessorImpl<char> { InputQueue.IsEmpty: false }) return true;
        var terminal = new PollDescriptor { Descriptor = 0, Events = ReadyToRead };
        return poll(ref terminal, 1, NapMilliseconds) != 0;
    }

    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    [DllImport("libc", EntryPoint = "poll")]
    private static extern int poll(ref PollDescriptor descriptors, nuint count, int timeoutMilliseconds);

    [StructLayout(LayoutKind.Sequential)]
    private struct PollDescriptor
    {
        public int Descriptor;
        public short Events;
        public short Happened;
    }
}
