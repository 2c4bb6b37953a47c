using Stockroom.Views;
using Terminal.Gui.Input;

namespace Stockroom.Tests.Screens.Today;

[Collection(OneScreenAtATime.Name)]
public sealed class TodayScreenTests
{
    [Fact]
    public void Today_Opens_WithWrongBeforeDueInTheOrderOfTheDesk()
    {
        using var rig = new ScreenRig();
        TodayView today = rig.Desk.Today();
        string[] order = ["Wrong", .. today.Wrong.Select(w => w.Title[..20]), "Due", .. today.Due.Select(d => $"{d.What}: {d.Content}")];
        int at = 0;
        foreach (string wanted in order)
        {
            int found = rig.Text.IndexOf(wanted, at, StringComparison.Ordinal);
            Assert.True(found >= 0, $"{wanted} does not follow in:\n{rig.Text}");
            at = found;
        }
    }

    [Fact]
    public void Today_EveryFinding_HasAWordForItsWeight()
    {
        using var rig = new ScreenRig();
        foreach (WrongLine wrong in rig.Desk.Today().Wrong)
            Assert.Contains(rig.Rows, r => r.Contains(wrong.Title[..20], StringComparison.Ordinal) && r.Contains(wrong.Weight.ToString().ToLowerInvariant(), StringComparison.Ordinal));
    }

    [Fact]
    public void Today_ChosenFinding_SaysWhyAndBySource()
    {
        using var rig = new ScreenRig(200, 60);
        foreach (WrongLine wrong in rig.Desk.Today().Wrong)
        {
            string text = string.Join(' ', rig.Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
            Assert.Contains(wrong.Source, text);
            Assert.Contains(wrong.Because.Split(' ')[^1], text);
            rig.Press(Key.CursorDown);
        }
    }

    [Fact]
    public void Enter_OnAFinding_ShowsTheContainerToActOn()
    {
        using ScreenRig rig = new ScreenRig().Press(Key.CursorDown, Key.Enter);
        Assert.Contains("2 HOLDINGS", rig.Text);
        Assert.Contains("── › K4M7T  nitric acid 65% ──", rig.Text);
    }

    [Fact]
    public void Enter_OnATask_ShowsItsContainer()
    {
        using ScreenRig rig = new ScreenRig().Press(Key.End, Key.Enter);
        Assert.Contains("── › N2C6H", rig.Text);
    }

    [Fact]
    public void Down_FromTheLastFinding_StepsOverTheHeadingToTheFirstTask()
    {
        using ScreenRig rig = new ScreenRig().Press(Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.CursorDown);
        Assert.Contains("› * due     P5X4G", rig.Text);
        rig.Press(Key.CursorUp);
        Assert.Contains("› * notice  T6B8V", rig.Text);
    }

    [Theory]
    [InlineData(-1, "today")]
    [InlineData(0, "today")]
    [InlineData(1, "since 1 day")]
    [InlineData(2, "since 2 days")]
    public void Task_DueSomeDaysAgo_SaysSinceWhen(int days, string said)
    {
        using var rig = new ScreenRig(desk: new FakeDesk { Date = new DateOnly(2026, 3, 16).AddDays(days) });
        Assert.EndsWith(said, Assert.Single(rig.Rows, r => r.Contains("top up the water", StringComparison.Ordinal)));
    }

    [Fact]
    public void Typing_AName_LeadsToTheHoldingsFilteredByIt()
    {
        using ScreenRig rig = new ScreenRig().Type("acet");
        Assert.Contains("2 HOLDINGS", rig.Text);
        Assert.Contains(" Find  acet ", rig.Text);
        Assert.Contains("1 of 12 containers", rig.Text);
    }

    [Fact]
    public void Scanned_CodeInThisRoom_ShowsThatContainer()
    {
        using ScreenRig rig = new ScreenRig().Type("STOCKROOM:M8D5Q\r");
        Assert.Contains("── › M8D5Q", rig.Text);
    }

    [Fact]
    public void NewDay_AsksTheDeskAgain()
    {
        using var rig = new ScreenRig();
        rig.Desk.Date = rig.Desk.Date.AddDays(1);
        rig.Window.RefreshAll();
        rig.Press(Key.CursorDown);
        Assert.Contains("Wednesday 18 March 2026", rig.Text);
    }

    [Fact]
    public void SameVersion_DoesNotAskTheDeskAgainAtEveryKey()
    {
        using ScreenRig rig = new ScreenRig().Press(Key.CursorDown, Key.CursorUp, Key.F2, Key.F1);
        Assert.Equal(1, rig.Desk.AskedToday);
    }
}
