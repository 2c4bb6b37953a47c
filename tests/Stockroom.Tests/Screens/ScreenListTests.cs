using Stockroom.Screens;
using Stockroom.Themes;
using Terminal.Gui.Input;

namespace Stockroom.Tests.Screens;

[Collection(OneScreenAtATime.Name)]
public sealed class ScreenListTests
{
    [Fact]
    public void ScreenList_AgainstTheAssembly_NamesEveryScreenOnce()
    {
        Type[] written = [.. typeof(Screen).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Screen)) && !t.IsAbstract)];
        Type[] listed = [.. Made().Select(s => s.GetType())];
        Assert.NotEmpty(written);
        Assert.Equal(written.Select(t => t.Name).Order(), listed.Select(t => t.Name).Order());
    }

    [Fact]
    public void ScreenList_Titles_AreOneWordEachAndDiffer()
    {
        Assert.All(ScreenList.All, static entry => Assert.Matches("^[A-Z][a-z]+$", entry.Title));
        Assert.Equal(ScreenList.All.Count, ScreenList.All.Select(e => e.Title).Distinct().Count());
    }

    [Fact]
    public void ScreenList_ScreenThatFinds_IsOneAndCan()
    {
        ScreenEntry entry = Assert.Single(ScreenList.All, static e => e.Finds);
        using Screen screen = entry.Make(Context());
        Assert.IsType<IFindsContainers>(screen, exactMatch: false);
        Assert.True(screen.TakesText);
    }

    [Fact]
    public void Screens_EachInAFolderOfItsTitle()
    {
        foreach ((ScreenEntry entry, Screen screen) in ScreenList.All.Zip(Made()))
        {
            Assert.Equal($"Stockroom.Screens.{entry.Title}", screen.GetType().Namespace);
            Assert.Equal(entry.Title + "Screen", screen.GetType().Name);
        }
    }

    [Fact]
    public void Keys_OfEveryScreen_NeverMeanTwoThingsAtOnce()
    {
        foreach (Screen screen in Made())
        {
            screen.Refresh();
            Key[] working = [.. screen.Keys.Where(a => a.Works).SelectMany(a => a.Keys)];
            Assert.NotEmpty(working);
            Assert.Equal(working.Length, working.Distinct().Count());
        }
    }

    [Fact]
    public void Keys_OfEveryScreen_HaveANameAndHelp()
    {
        foreach (KeyAction action in Made().SelectMany(s => s.Keys))
        {
            Assert.NotEmpty(action.Keys);
            Assert.False(string.IsNullOrWhiteSpace(action.Name));
            Assert.False(string.IsNullOrWhiteSpace(action.Help));
        }
    }

    [Fact]
    public void ScreenFolders_OtherThanTheShell_HoldAScreenEach()
    {
        string[] folders = [.. typeof(Screen).Assembly.GetTypes().Select(t => t.Namespace ?? "").Where(n => n.StartsWith("Stockroom.Screens.", StringComparison.Ordinal)).Distinct()];
        string[] rooms = [.. folders.Select(n => n["Stockroom.Screens.".Length..]).Except(["Shell", "Drawing"])];
        Assert.Equal(ScreenList.All.Select(e => e.Title).Order(), rooms.Order());
    }

    private static IEnumerable<Screen> Made() => [.. ScreenList.All.Select(e => e.Make(Context()))];

    private static ScreenContext Context() => new(new FakeDesk(), MonochromeTheme.With(GlyphSet.Ascii), new Nowhere());

    private sealed class Nowhere : INavigator
    {
        public void ToContainer(string id)
        {
        }

        public void ToScanned(string id)
        {
        }

        public void Say(string text)
        {
        }
    }
}
