using Stockroom.Screens.Holdings;
using Stockroom.Views;
using Terminal.Gui.Input;

namespace Stockroom.Tests.Screens.Holdings;

[Collection(OneScreenAtATime.Name)]
public sealed class HoldingsScreenTests
{
    private static readonly string[] Ids = [.. new FakeDesk().All.Select(r => r.Id)];

    [Theory]
    [InlineData("bro", "B2R7K H4N8P")]
    [InlineData("BRO", "B2R7K H4N8P")]
    [InlineData("acid lower", "H4N8P L3W9B T6B8V")]
    [InlineData("lower acid", "H4N8P L3W9B T6B8V")]
    [InlineData("67-64-1", "L3W9B")]
    [InlineData("acid bromine ampoule", "")]
    public void Typing_Words_LeavesTheRowsThatHaveThemAll(string typed, string left)
    {
        using ScreenRig rig = Open().Type(typed);
        Assert.Equal(left, string.Join(' ', ListedIds(rig)));
        Assert.Contains($" {left.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length} of 12 containers", rig.Text);
    }

    [Fact]
    public void Typing_OneMoreLetter_NarrowsAtOnce()
    {
        using ScreenRig rig = Open().Type("e");
        int before = ListedIds(rig).Count;
        rig.Type("the");
        Assert.True(before > 2);
        Assert.Equal(["P5X4G", "R9K2D"], ListedIds(rig));
    }

    [Fact]
    public void Backspace_TakesOneLetterBack()
    {
        using ScreenRig rig = Open().Type("bromx");
        Assert.Empty(ListedIds(rig));
        rig.Press(Key.Backspace);
        Assert.Equal(["B2R7K", "H4N8P"], ListedIds(rig));
    }

    [Fact]
    public void Esc_ClearsTheFilterAndKeepsTheChosenContainer()
    {
        using ScreenRig rig = Open().Type("ether").Press(Key.CursorDown, Key.Esc);
        Assert.Contains("12 containers", rig.Text);
        Assert.Contains("›- R9K2D", rig.Text);
    }

    [Fact]
    public void UpAndDown_ChooseAndShowTheCard()
    {
        using ScreenRig rig = Open().Press(Key.CursorDown, Key.CursorDown, Key.CursorUp);
        Assert.Contains("── C9F3M  caesium, flame-sealed ampoule ──", rig.Text);
    }

    [Fact]
    public void Up_OnTheFirstRow_StaysThere()
    {
        using ScreenRig rig = Open().Press(Key.CursorUp, Key.CursorUp);
        Assert.Contains("── B2R7K", rig.Text);
    }

    [Fact]
    public void End_ScrollsTheListToTheLastRow()
    {
        using ScreenRig rig = Open().Press(Key.End);
        Assert.Contains("›  W3H5F", rig.Text);
        Assert.Equal("W3H5F", ListedIds(rig)[^1]);
    }

    [Fact]
    public void Enter_PutsTheKeysOnTheCardWhichThenScrolls()
    {
        using ScreenRig rig = Open().Press(Key.Enter);
        Assert.Contains("── › B2R7K", rig.Text);
        Assert.DoesNotContain("received, bought, lot 7", rig.Text);
        rig.Press(Key.End);
        Assert.Contains("received, bought, lot 7", rig.Text);
        Assert.Contains("── › B2R7K", rig.Text);
        rig.Press(Key.Home);
        Assert.Contains("Contents", rig.Text);
        rig.Press(Key.Esc, Key.CursorDown);
        Assert.Contains("── C9F3M", rig.Text);
    }

    [Fact]
    public void Card_ScrolledLineByLine_ShowsEveryLine()
    {
        using ScreenRig rig = Open().Press(Key.CursorRight);
        var seen = new HashSet<string>();
        for (int i = 0; i < 40; i++)
        {
            seen.UnionWith(rig.Rows.Select(r => r.Trim()));
            rig.Press(Key.CursorDown);
        }

        string[] wanted = ["Contents", "Loss", "Hazards", "!! H330         Fatal if inhaled", "! H400         Very toxic to aquatic life", "Neighbours", "History", "2025-10-30   received, bought, lot 7"];
        Assert.All(wanted, w => Assert.Contains(w, seen));
    }

    [Theory]
    [InlineData("STOCKROOM:K4M7T")]
    [InlineData("stockroom:k4m7t")]
    public void Scanned_CodeAndEnter_ShowsThatContainer(string code)
    {
        using ScreenRig rig = Open().Type(code + "\r");
        Assert.Contains("── › K4M7T  nitric acid 65% ──", rig.Text);
        Assert.Contains("12 containers", rig.Text);
    }

    [Fact]
    public void Scanned_PlainWordsBehindTheCode_AreSwallowedUntilThePause()
    {
        var time = new ManualTime();
        using var rig = new ScreenRig(time: time);
        rig.Type("STOCKROOM:K4M7T\r");
        foreach (char c in "Nitric acid 65%\rDanger 2\r")
        {
            time.Advance(TimeSpan.FromMilliseconds(5));
            rig.Type(c.ToString());
        }

        Assert.Contains("── › K4M7T  nitric acid 65% ──", rig.Text);
        Assert.Contains("12 containers", rig.Text);
        time.Advance(TimeSpan.FromMilliseconds(300));
        rig.Type("ether");
        Assert.Equal(["P5X4G", "R9K2D"], ListedIds(rig));
    }

    [Fact]
    public void Scanned_IdThatTheBookDoesNotHave_IsSaidInOneLine()
    {
        using ScreenRig rig = Open().Type("STOCKROOM:ZZZZZ\r");
        Assert.Contains("no container \"ZZZZZ\" in this book", rig.Rows[^1]);
    }

    [Fact]
    public void Pasted_CodeWithPlainWords_ShowsThatContainer()
    {
        using ScreenRig rig = Open().Paste("STOCKROOM:L3W9B\nacetone\nDanger\n");
        Assert.Contains("── › L3W9B  acetone ──", rig.Text);
    }

    [Fact]
    public void Pasted_Words_AreTypedIntoTheFilter()
    {
        using ScreenRig rig = Open().Paste("acetone\n");
        Assert.Equal(["L3W9B"], ListedIds(rig));
    }

    [Fact]
    public void EmptyBook_SaysSo()
    {
        using var rig = new ScreenRig(desk: new FakeDesk { All = [] });
        rig.Press(Key.F2, Key.CursorDown, Key.End, Key.Enter);
        Assert.Contains("The book holds nothing yet.", rig.Text);
    }

    [Fact]
    public void Rows_ThatChangeInTheBook_AreShownAtTheNextKey()
    {
        var desk = new FakeDesk();
        using var rig = new ScreenRig(desk: desk);
        rig.Press(Key.F2, Key.CursorDown);
        desk.All = [.. desk.All.Skip(1)];
        desk.Version++;
        rig.Press(Key.CursorLeft);
        Assert.DoesNotContain("B2R7K", rig.Text);
        Assert.Contains("── C9F3M", rig.Text);
    }

    [Fact]
    public void TextWithControlCharacters_CannotDisturbTheScreen()
    {
        HoldingRow row = new("B2R7K", "evil \u001b[2J\r\n\tname", "1 g", "room", "!", "none", "evil");
        using var rig = new ScreenRig(desk: new FakeDesk { All = [row] });
        rig.Press(Key.F2);
        Assert.Contains("evil  [2J   name", rig.Text);
        Assert.DoesNotContain("\u001b[2J", rig.LastSent);
    }

    [Fact]
    public void Filter_OfTwentyThousandRows_FindsEachThatHoldsAllWords() =>
        Assert.Equal(140, HoldingFilter.Apply([.. Enumerable.Range(0, 20_000).Select(Numbered)], "shelf acid 199").Count);

    [Fact]
    public void Typing_OverTwentyThousandRows_ListsThoseThatFitAndSaysHowMany()
    {
        using var rig = new ScreenRig(200, 60, new FakeDesk { All = [.. Enumerable.Range(0, 20_000).Select(Numbered)] });
        rig.Press(Key.F2).Type("acid 1999");
        string screen = string.Join('\n', rig.Rows);
        Assert.True(screen.Contains("12 of 20000", StringComparison.Ordinal), screen);
        Assert.Contains("01999", screen, StringComparison.Ordinal);
        Assert.Contains("19990", screen, StringComparison.Ordinal);
        rig.Press(Key.Backspace);
        Assert.DoesNotContain("12 of 20000", string.Join('\n', rig.Rows), StringComparison.Ordinal);
    }

    private static HoldingRow Numbered(int number)
    {
        HoldingRow model = new FakeDesk().All[number % Ids.Length];
        return model with { Id = $"{number:D5}", SearchText = $"{number:D5} acid shelf " + model.SearchText };
    }

    private static ScreenRig Open() => new ScreenRig().Press(Key.F2);

    private static List<string> ListedIds(ScreenRig rig)
    {
        int end = rig.Rows.ToList().FindIndex(3, r => r.StartsWith("──", StringComparison.Ordinal));
        return [.. rig.Rows.Take(end).SelectMany(r => r.Split(' ')).Where(Ids.Contains)];
    }
}
