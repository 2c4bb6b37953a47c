using System.Text;
using Stockroom.Themes;
using Terminal.Gui.Drawing;

namespace Stockroom.Tests.Screens;

[Collection(OneScreenAtATime.Name)]
public sealed class GoldenScreenTests
{
    public static TheoryData<string, int, int> ScenesAndSizes()
    {
        var data = new TheoryData<string, int, int>();
        foreach (string scene in Scenes.All.Keys)
        {
            data.Add(scene, 80, 24);
            data.Add(scene, 120, 40);
        }

        return data;
    }

    public static TheoryData<string> SceneNames() => [.. Scenes.All.Keys];

    [Theory]
    [MemberData(nameof(ScenesAndSizes))]
    public void Scene_InColourAndMonochrome_SaysTheWordsOfItsFile(string scene, int columns, int rows)
    {
        string name = $"{scene}-{columns}x{rows}";
        using (var colour = new ScreenRig(columns, rows, theme: ColourTheme.With(GlyphSet.Unicode)))
        {
            Scenes.All[scene](colour);
            GoldenFile.Check(name, colour.Text);
        }

        using var monochrome = new ScreenRig(columns, rows, theme: MonochromeTheme.With(GlyphSet.Unicode));
        Scenes.All[scene](monochrome);
        GoldenFile.Check(name, monochrome.Text);
    }

    [Theory]
    [MemberData(nameof(SceneNames))]
    public void Scene_Monochrome_HasNoColourInAnyCell(string scene)
    {
        using var rig = new ScreenRig(theme: MonochromeTheme.With(GlyphSet.Unicode));
        Scenes.All[scene](rig);
        Assert.All(rig.Looks, static look => Assert.Equal((Color.None, Color.None), (look.Foreground, look.Background)));
    }

    [Fact]
    public void Today_InColour_ShowsDangerInItsColour()
    {
        using var rig = new ScreenRig(theme: ColourTheme.With(GlyphSet.Unicode));
        Assert.Contains(rig.Looks, static look => look.Foreground != Color.None);
    }

    [Theory]
    [MemberData(nameof(SceneNames))]
    public void Scene_InAscii_HasNothingElse(string scene)
    {
        using var rig = new ScreenRig(theme: MonochromeTheme.With(GlyphSet.Ascii));
        Scenes.All[scene](rig);
        Assert.True(Ascii.IsValid(rig.Text), rig.Text);
        GoldenFile.Check($"{scene}-ascii-80x24", rig.Text);
    }

    [Fact]
    public void Difference_OfTwoTexts_ShowsTheRowsThatDifferWithTheirNumbers()
    {
        string shown = GoldenFile.Difference("x", "a\nb\nc\n", "a\nB\nc\nd\n");
        Assert.Contains("  2 - b\n  2 + B\n", shown);
        Assert.DoesNotContain(" - a", shown);
        Assert.Contains(GoldenFile.AcceptVariable + "=1", shown);
    }
}
