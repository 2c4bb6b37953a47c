using Stockroom.Screens.Holdings;
using Stockroom.Screens.Places;
using Stockroom.Screens.Today;

namespace Stockroom.Screens;

/// <summary>A screen as the shell knows it before it is made.</summary>
/// <param name="Title">One word.</param>
/// <param name="Finds">Whether it is the one that finds containers; then it takes what is typed or scanned in other screens.</param>
/// <param name="Make">Makes it; called when it is first shown.</param>
internal sealed record ScreenEntry(string Title, bool Finds, Func<ScreenContext, Screen> Make);

/// <summary>All screens in the order of their number keys; a new screen is named here and nowhere else.</summary>
internal static class ScreenList
{
    public static IReadOnlyList<ScreenEntry> All { get; } =
    [
        new("Today", Finds: false, static context => new TodayScreen(context)),
        new("Holdings", Finds: true, static context => new HoldingsScreen(context)),
        new("Places", Finds: false, static context => new PlacesScreen(context)),
    ];
}
