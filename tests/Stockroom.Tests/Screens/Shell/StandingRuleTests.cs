using Stockroom.Themes;
using Stockroom.Views;
using Terminal.Gui.Input;

namespace Stockroom.Tests.Screens.Shell;

/// <summary>What stands on every screen: a damaged book is never shown without saying so.</summary>
[Collection(OneScreenAtATime.Name)]
public sealed class StandingRuleTests
{
    private static readonly Standing Damaged = new(Attention.Danger, "DAMAGED BOOK, to read only: what holds is shown; Today says what fails");

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Screens_OfADamagedBook_SayItOnEachAndLookLikeTheirFile(int columns, int rows)
    {
        using var rig = new ScreenRig(columns, rows, new FakeDesk { Standing = Damaged }, MonochromeTheme.With(GlyphSet.Unicode));
        GoldenFile.Check($"damaged-{columns}x{rows}", rig.Text);
        foreach (Key key in new[] { Key.F1, Key.F2, Key.F3, new Key('?') })
        {
            rig.Press(key);
            Assert.Contains("DAMAGED BOOK, to read only", rig.Rows[1], StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Standing_ThatComesAndGoes_IsShownWhenAllIsAskedAnew()
    {
        var desk = new FakeDesk { Standing = new(Attention.Notice, "the record behind this is still being verified") };
        using var rig = new ScreenRig(desk: desk);
        Assert.Contains("still being verified", rig.Rows[1], StringComparison.Ordinal);
        desk.Standing = null;
        rig.Window.RefreshAll();
        rig.Press(Key.CursorDown);
        Assert.DoesNotContain("verified", rig.Text, StringComparison.Ordinal);
        Assert.Equal(80, rig.Rows[1].Length);
    }
}
