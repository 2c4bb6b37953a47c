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
    public const string FailingCardsVariable = "STOCKROOM_TESTS_FAILING_CARDS";
    public const string HangingCardsVariable = "STOCKROOM_TESTS_HANGING_CARDS";

    [ModuleInitializer]
    internal static void Begin()
    {
        if (!Is(AsScreensVariable))
        {
            Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
            return;
        }

        var desk = new FakeDesk { CardsFail = Is(FailingCardsVariable), CardsHang = Is(HangingCardsVariable) };
        Environment.Exit(TerminalSession.Run(desk, TimeProvider.System));
    }

    private static bool Is(string variable) => Environment.GetEnvironmentVariable(variable) == "1";
}
