using System.Runtime.CompilerServices;
using Stockroom.Screens;

namespace Stockroom.Tests.Screens;

/// <summary>
/// Keeps the tests off the terminal they are started from. Started once more with a variable set, the test program is
/// itself the program under test: the screens over the fake desk on a real terminal.
/// </summary>
internal static class TestProcess
{
    public const string AsScreensVariable = "STOCKROOM_TESTS_AS_SCREENS";

    [ModuleInitializer]
    internal static void Begin()
    {
        if (Environment.GetEnvironmentVariable(AsScreensVariable) == "1")
            Environment.Exit(TerminalSession.Run(new FakeDesk(), TimeProvider.System));
        Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
    }
}
