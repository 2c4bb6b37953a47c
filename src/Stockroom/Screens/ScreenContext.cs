using Stockroom.Themes;
using Stockroom.Views;

namespace Stockroom.Screens;

/// <summary>What every screen is given.</summary>
internal sealed record ScreenContext(IDesk Desk, Theme Theme, INavigator Go);

/// <summary>How a screen leads to another without knowing it.</summary>
internal interface INavigator
{
    /// <summary>Shows a container with its card; says so where there is no such container.</summary>
    void ToContainer(string id);

    /// <summary>The same for an id that a scanner typed; the plain words that follow it are swallowed.</summary>
    void ToScanned(string id);

    /// <summary>Says one line to the keeper until the next key.</summary>
    void Say(string text);
}

/// <summary>A screen in which containers can be found.</summary>
internal interface IFindsContainers
{
    /// <returns>False where the book has no such container.</returns>
    bool ShowContainer(string id);
}
