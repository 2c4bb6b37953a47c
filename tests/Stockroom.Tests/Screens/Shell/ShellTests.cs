using Stockroom.Screens;
using Stockroom.Screens.Shell;
using Terminal.Gui.Input;

namespace Stockroom.Tests.Screens.Shell;

[Collection(OneScreenAtATime.Name)]
public sealed class ShellTests
{
    [Fact]
    public void Tab_GoesRoundTheRooms()
    {
        using var rig = new ScreenRig();
        Assert.Contains("1 TODAY   2 Holdings   3 Places", rig.Rows[0]);
        Assert.Contains("1 Today   2 HOLDINGS   3 Places", rig.Press(Key.Tab).Rows[0]);
        Assert.Contains("1 Today   2 Holdings   3 PLACES", rig.Press(Key.Tab).Rows[0]);
        Assert.Contains("1 TODAY   2 Holdings   3 Places", rig.Press(Key.Tab).Rows[0]);
        Assert.Contains("1 Today   2 Holdings   3 PLACES", rig.Press(Key.Tab.WithShift).Rows[0]);
    }

    [Fact]
    public void Digits_LeadToTheirRoom_ButAreTypedAmongTheHoldings()
    {
        using ScreenRig rig = new ScreenRig().Press(Key.D3);
        Assert.Contains("3 PLACES", rig.Rows[0]);
        rig.Press(Key.D2, Key.D1);
        Assert.Contains("2 HOLDINGS", rig.Rows[0]);
        Assert.Contains(" Find  1 ", rig.Text);
        Assert.Contains("1 TODAY", rig.Press(Key.F1).Rows[0]);
    }

    [Fact]
    public void CtrlQ_AsksTheWindowToStop()
    {
        using ScreenRig rig = new ScreenRig().Press(Key.Q.WithCtrl);
        Assert.True(rig.Window.StopRequested);
    }

    [Fact]
    public void Esc_Alone_DoesNotLeave()
    {
        using ScreenRig rig = new ScreenRig().Press(Key.Esc, Key.Esc);
        Assert.False(rig.Window.StopRequested);
    }

    [Fact]
    public void QuestionMark_ShowsExactlyTheKeysThatWorkNow()
    {
        using ScreenRig rig = new ScreenRig().Press(new Key('?'));
        Assert.Contains("choose a line", rig.Text);
        Assert.Contains("F2 or 2", rig.Text);
        Assert.DoesNotContain("scroll the reasons", rig.Text);
        rig.Press(Key.Esc, Key.F2, new Key('?'));
        Assert.Contains("   F2   ", rig.Text);
        Assert.DoesNotContain("F2 or 2", rig.Text);
        Assert.DoesNotContain("take back a letter", rig.Text);
        rig.Press(Key.Esc).Type("a?");
        Assert.Contains("take back a letter", rig.Text);
    }

    [Fact]
    public void AnyKey_OnTheSheet_ClosesIt()
    {
        using ScreenRig rig = new ScreenRig();
        string before = rig.Text;
        rig.Press(new Key('?'), Key.Space);
        Assert.Equal(before, rig.Text);
        rig.Press(new Key('?'), new Key('?'));
        Assert.Equal(before, rig.Text);
    }

    [Fact]
    public void Key_ThatDoesNothingNow_SaysWhy()
    {
        using ScreenRig rig = new ScreenRig().Press(Key.F2, Key.Backspace);
        Assert.Equal(" Backspace does nothing now: the filter is empty", rig.Rows[^1]);
        rig.Press(Key.CursorDown);
        Assert.DoesNotContain("does nothing", rig.Text);
    }

    [Fact]
    public void KeyLine_NamesOnlyKeysThatWork()
    {
        using ScreenRig rig = new ScreenRig().Press(Key.F2);
        Assert.DoesNotContain("Esc clears", rig.Rows[^1]);
        rig.Type("x");
        Assert.Contains("Esc clears", rig.Rows[^1]);
        Assert.Contains("? keys", rig.Rows[^1]);
        Assert.Contains("Ctrl-Q leaves", rig.Rows[^1]);
    }

    /// <summary>What is drawn after a resize must be what a fresh start at that size draws.</summary>
    [Fact]
    public void Resize_ToAnySize_DrawsWhatAFreshStartDraws()
    {
        foreach ((string scene, Action<ScreenRig> lead) in Scenes.All)
        {
            using var resized = new ScreenRig();
            lead(resized);
            foreach ((int columns, int rows) in new[] { (120, 40), (200, 60), (60, 15), (110, 24), (109, 24), (80, 24), (30, 8), (80, 24) })
            {
                resized.Resize(columns, rows);
                using var fresh = new ScreenRig(columns, rows);
                lead(fresh);
                if (rows >= 24) Assert.True(fresh.Text == resized.Text, GoldenFile.Difference($"{scene} {columns}x{rows}", fresh.Text, resized.Text));
            }
        }
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(3, 2)]
    [InlineData(10, 4)]
    [InlineData(20, 5)]
    public void Screens_WithHardlyAnySpace_DoNotFail(int columns, int rows)
    {
        foreach (Action<ScreenRig> lead in Scenes.All.Values)
        {
            using var rig = new ScreenRig(columns, rows);
            lead(rig);
            Assert.Equal(rows, rig.Rows.Count);
        }
    }

    [Fact]
    public void ChoosingTheNextLine_SendsNeitherTheRoomsNorTheOtherLines()
    {
        using ScreenRig rig = new ScreenRig(200, 60).Press(Key.F2);
        rig.Press(Key.CursorDown);
        Assert.Contains("C9F3M", rig.LastSent);
        Assert.DoesNotContain("saltmarsh", rig.LastSent);
        Assert.DoesNotContain("K4M7T", rig.LastSent);
    }

    [Fact]
    public void CtrlL_DrawsEverythingAfresh()
    {
        using var rig = new ScreenRig();
        string before = rig.Text;
        rig.Press(Key.L.WithCtrl);
        Assert.Contains("saltmarsh", rig.LastSent);
        Assert.Equal(before, rig.Text);
    }

    [Fact]
    public void LongBookName_LeavesTheRoomsInSight()
    {
        using var rig = new ScreenRig(desk: new FakeDesk { BookName = new string('x', 200) + ".stockbook" });
        Assert.Contains("…", rig.Rows[0]);
        Assert.Contains("1 TODAY   2 Holdings   3 Places", rig.Rows[0]);
    }

    [Fact]
    public void TryPress_TwoActionsOnOneKey_DoesTheOneThatWorks()
    {
        string done = "";
        KeyAction hindered = new("A", "first", () => done += "1", Key.A) { Hindrance = () => "not now" };
        KeyAction free = new("A", "second", () => done += "2", Key.A);
        Assert.True(KeyRing.TryPress(Key.A, [hindered, free], out string? why));
        Assert.Null(why);
        Assert.Equal("2", done);
        Assert.True(KeyRing.TryPress(Key.A, [hindered], out why));
        Assert.Equal("A does nothing now: not now", why);
        Assert.False(KeyRing.TryPress(Key.B, [hindered, free], out _));
        Assert.Equal("2", done);
    }
}
