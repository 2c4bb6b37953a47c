using Terminal.Gui.Input;

namespace Stockroom.Tests.Screens.Places;

[Collection(OneScreenAtATime.Name)]
public sealed class PlacesScreenTests
{
    [Fact]
    public void Places_Open_ShowPlacesWithCountsAndNoContainersYet()
    {
        using ScreenRig rig = Open();
        Assert.Contains("▾ prep room", rig.Text);
        Assert.Contains("▸ upper shelf", rig.Text);
        Assert.Contains("12 to 28 C, 8 containers, 5 wrong", rig.Text);
        Assert.DoesNotContain("K4M7T", rig.Text);
    }

    [Fact]
    public void Enter_OnAShelf_OpensItAndShutsItAgain()
    {
        using ScreenRig rig = Open().Press(Key.CursorDown, Key.CursorDown, Key.Enter);
        Assert.Contains("›    ▾ upper shelf", rig.Text);
        Assert.Contains("C9F3M  caesium", rig.Text);
        rig.Press(Key.Enter);
        Assert.Contains("›    ▸ upper shelf", rig.Text);
        Assert.DoesNotContain("C9F3M  caesium, flame-sealed ampoule   ", rig.Text);
    }

    [Fact]
    public void Enter_OnAContainer_ShowsItAmongTheHoldings()
    {
        using ScreenRig rig = Open().Press(Key.CursorDown, Key.CursorDown, Key.CursorRight, Key.CursorDown, Key.CursorDown, Key.Enter);
        Assert.Contains("2 HOLDINGS", rig.Text);
        Assert.Contains("── › C9F3M", rig.Text);
    }

    [Fact]
    public void Left_ShutsTheOpenPlaceThenGoesOutward()
    {
        using ScreenRig rig = Open().Press(Key.CursorDown, Key.CursorLeft);
        Assert.Contains("›  ▸ element cabinet", rig.Text);
        rig.Press(Key.CursorLeft);
        Assert.Contains("›▾ display room", rig.Text);
    }

    [Fact]
    public void Left_InAShutRoom_SaysWhyItDoesNothing()
    {
        using ScreenRig rig = Open().Press(Key.CursorLeft, Key.CursorLeft);
        Assert.Contains("Left does nothing now: no place is outside it", rig.Rows[^1]);
    }

    [Fact]
    public void Refresh_AfterAChange_KeepsWhatIsOpenAndChosen()
    {
        using ScreenRig rig = Open().Press(Key.CursorDown, Key.CursorDown, Key.CursorRight, Key.CursorDown);
        string before = rig.Text;
        rig.Desk.Version++;
        rig.Press(Key.CursorRight);
        Assert.Equal(before.Split('\n')[..^2], rig.Text.Split('\n')[..^2]);
    }

    private static ScreenRig Open() => new ScreenRig().Press(Key.F3);
}
