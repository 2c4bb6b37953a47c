using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Stockroom.Tests.Screens.RealTerminal;

/// <summary>The screens on a real terminal of the operating system: how they end, and what they leave behind.</summary>
public sealed partial class TerminalSessionTests
{
    private static readonly string[] LeavingSequences =
    [
        "\u001b[?1003l", // no mouse reports (xterm control sequences, DEC private modes)
        "\u001b[?2004l", // no bracketed paste
        "\u001b[?1049l", // back to the normal screen
        "\u001b[?25h", // the cursor is seen
    ];

    [Fact]
    public void CtrlQ_LeavesTheTerminalAsItWasFound()
    {
        using var terminal = new PseudoTerminal();
        terminal.WaitFor("TODAY");
        Assert.NotEqual(terminal.SettingsBefore, terminal.Settings());
        terminal.Send("\u0011");
        Assert.Equal(0, terminal.ExitWithin(10));
        AssertAsFound(terminal);
    }

    [Theory]
    [InlineData(15)]
    [InlineData(2)]
    [InlineData(1)]
    public void Signal_LeavesTheTerminalAsItWasFound(int number)
    {
        using var terminal = new PseudoTerminal();
        terminal.WaitFor("TODAY");
        terminal.Signal(number);
        Assert.Equal(128 + number, terminal.ExitWithin(10));
        AssertAsFound(terminal);
    }

    [Fact]
    public void Signal_WhileTheKeysAreShownAndTextIsTyped_StillEnds()
    {
        using var terminal = new PseudoTerminal();
        terminal.WaitFor("TODAY");
        terminal.Send("bromine?");
        terminal.WaitFor("Keys that work now in Holdings");
        terminal.Signal(15);
        Assert.Equal(143, terminal.ExitWithin(10));
        AssertAsFound(terminal);
    }

    [Fact]
    public void Signal_WhileTheDeskNeverAnswers_StillEndsAndLeavesTheTerminalClean()
    {
        using var terminal = new PseudoTerminal((TestProcess.HangingCardsVariable, "1"));
        terminal.WaitFor("TODAY");
        terminal.Send("\t");
        Thread.Sleep(500);
        terminal.Signal(15);
        Assert.Equal(143, terminal.ExitWithin(10));
        AssertAsFound(terminal);
    }

    [Fact]
    public void TerminalThatVanishes_EndsTheProgramWithinSeconds()
    {
        using var terminal = new PseudoTerminal();
        terminal.WaitFor("TODAY");
        terminal.Vanish();
        Assert.Equal(129, terminal.ExitWithin(8));
    }

    /// <summary>As under nohup: no signal comes, and reading gives "end of file" for ever.</summary>
    [Fact]
    public void TerminalThatVanishes_WithHangUpIgnored_EndsTheProgramWithinSeconds()
    {
        using var terminal = new PseudoTerminal(hangUpIsIgnored: true);
        terminal.WaitFor("TODAY");
        terminal.Vanish();
        Assert.Equal(129, terminal.ExitWithin(8));
    }

    [Fact]
    public void NoColor_OnARealTerminal_SendsNoColour()
    {
        using var terminal = new PseudoTerminal(("NO_COLOR", "1"));
        terminal.WaitFor("TODAY");
        terminal.Send("\t\t");
        terminal.WaitFor("PLACES");
        terminal.Send("\u0011");
        terminal.ExitWithin(10);
        string[] colours = [.. Looks().Matches(terminal.Output).SelectMany(m => m.Groups[1].Value.Split(';')).Where(IsColour).Distinct()];
        Assert.Empty(colours);
    }

    [Fact]
    public void Colour_OnARealTerminal_IsSent()
    {
        using var terminal = new PseudoTerminal();
        terminal.WaitFor("Ctrl-Q");
        Assert.Contains(Looks().Matches(terminal.Output).SelectMany(m => m.Groups[1].Value.Split(';')), IsColour);
    }

    [Fact]
    public void IdleProgram_WritesNothing()
    {
        using var terminal = new PseudoTerminal();
        terminal.WaitFor("Ctrl-Q");
        Thread.Sleep(1500);
        int before = terminal.Output.Length;
        TimeSpan used = terminal.Program.TotalProcessorTime;
        Thread.Sleep(2000);
        Assert.Equal(before, terminal.Output.Length);
        terminal.Program.Refresh();
        Assert.True(terminal.Program.TotalProcessorTime - used < TimeSpan.FromMilliseconds(400), "more than a fifth of a core while idle");
    }

    [Fact]
    public void NoTerminal_IsSaidInOneLine()
    {
        var start = new ProcessStartInfo(Path.Combine(AppContext.BaseDirectory, "Stockroom.Tests"))
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment[TestProcess.AsScreensVariable] = "1";
        using Process program = Process.Start(start)!;
        program.StandardInput.Close();
        Assert.True(program.WaitForExit(TimeSpan.FromSeconds(20)));
        Assert.Equal(2, program.ExitCode);
        Assert.Empty(program.StandardOutput.ReadToEnd());
        Assert.Matches("^stockroom: the screens need a terminal;[^\n]*\n$", program.StandardError.ReadToEnd());
    }

    [Fact]
    public void DeskThatFails_LeavesTheTerminalCleanAndSaysOneLine()
    {
        using var terminal = new PseudoTerminal((TestProcess.FailingCardsVariable, "1"));
        terminal.WaitFor("TODAY");
        terminal.Send("\t");
        Assert.Equal(3, terminal.ExitWithin(10));
        AssertAsFound(terminal);
        Assert.EndsWith("stockroom: the screens had to stop: the card is torn\r\n", terminal.Output);
    }

    private static void AssertAsFound(PseudoTerminal terminal)
    {
        Assert.All(LeavingSequences, sequence => Assert.Contains(sequence, terminal.Output[terminal.Output.LastIndexOf("TODAY", StringComparison.Ordinal)..]));
        Assert.Equal(terminal.SettingsBefore, terminal.Settings());
    }

    /// <summary>The "select graphic rendition" numbers of ECMA-48 that set a colour; 39 and 49 set it back.</summary>
    private static bool IsColour(string number) => int.TryParse(number, out int n) && n is (>= 30 and <= 38) or (>= 40 and <= 48) or (>= 90 and <= 107);

    [GeneratedRegex("\u001b\\[([0-9;]*)m")]
    private static partial Regex Looks();
}
