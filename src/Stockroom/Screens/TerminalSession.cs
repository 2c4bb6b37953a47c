using Stockroom.Screens.Shell;
using Stockroom.Themes;
using Stockroom.Views;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace Stockroom.Screens;

/// <summary>The terminal UI from its first to its last character; the only door by which the verbs reach it.</summary>
public static class TerminalSession
{
    private const int Refused = 3;

    /// <summary>Opens the screens and returns when the keeper leaves, the terminal is gone, or a signal asks for it.</summary>
    /// <returns>0; 2 without a terminal; 3 after a failure, with one line on standard error; 128 and its number after a signal.</returns>
    public static int Run(IDesk desk, TimeProvider time)
    {
        ArgumentNullException.ThrowIfNull(desk);
        ArgumentNullException.ThrowIfNull(time);
        if (Console.IsInputRedirected || Console.IsOutputRedirected)
        {
            Console.Error.WriteLine("stockroom: the screens need a terminal; for plain lines ask \"stockroom today\", \"list\" or \"places\"");
            return 2;
        }

        Theme theme = TerminalTraits.From(Environment.GetEnvironmentVariable).ToTheme();
        using var watch = new TerminalWatch();
        Exception? failure = null;
        try
        {
            RunWatched(desk, theme, time, watch);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            failure = e;
        }

        if (failure is null || watch.TerminalIsGone) return watch.ExitCode;
        Console.Error.WriteLine($"stockroom: the screens had to stop: {failure.Message.ReplaceLineEndings(" ")}");
        return Refused;
    }

    private static void RunWatched(IDesk desk, Theme theme, TimeProvider time, TerminalWatch watch)
    {
        IApplication app = Application.Create();
        try
        {
            app.AnsiStartupGate = null;
            app.Init(DriverRegistry.Names.ANSI);
            using var window = new StockroomWindow(desk, theme, time);
            var idle = new IdleWait(app, watch);
            Application.MaximumIterationsPerSecond = IdleWait.TurnsPerSecond;
            app.Iteration += (_, _) => idle.BeforeTurn();
            watch.Start(() => app.Invoke(() => StopAll(app)));
            _ = desk.Verified.ContinueWith(_ => app.Invoke(window.RefreshAll), TaskScheduler.Default);
            using var days = new DayWatch(time, () => app.Invoke(window.RefreshAll));
            app.Run(window);
        }
        finally
        {
            // With the terminal gone the library's reader never comes back, so that disposing would wait for ever.
            if (!watch.TerminalIsGone) app.Dispose();
        }
    }

    private static void StopAll(IApplication app)
    {
        foreach (SessionToken session in app.SessionStack ?? [])
            if (session.Runnable is { } runnable) app.RequestStop(runnable);
    }
}
