using System.Drawing;
using Stockroom.Themes;
using Stockroom.Views;
using Terminal.Gui.ViewBase;

namespace Stockroom.Screens;

/// <summary>One room of the program: its keys, its panes, and how they stand in the space there is.</summary>
internal abstract class Screen : View
{
    protected Screen(ScreenContext context)
    {
        Context = context;
        CanFocus = false;
        X = 0;
        Width = Dim.Fill();
        SetScheme(context.Theme.Scheme);
    }

    /// <summary>The keys that this screen knows, the most useful first.</summary>
    public abstract IReadOnlyList<KeyAction> Keys { get; }

    /// <summary>Whether plain characters are typed into this screen.</summary>
    public virtual bool TakesText => false;

    /// <summary>Where the next character will stand, in columns and rows of this screen; null where nothing is typed.</summary>
    public virtual Point? Caret => null;

    /// <summary>Asks the desk again and keeps the place of the reader where it still exists.</summary>
    public abstract void Refresh();

    /// <summary>Takes characters that were typed.</summary>
    public virtual void Type(string text)
    {
    }

    /// <summary>Places the panes in so many columns and rows.</summary>
    protected abstract void Arrange(int columns, int rows);

    protected ScreenContext Context { get; }

    protected IDesk Desk => Context.Desk;

    protected Theme Theme => Context.Theme;

    protected void Rearrange() => Arrange(Viewport.Width, Viewport.Height);

    protected override bool OnClearingViewport() => true;

    protected override void OnSubViewLayout(LayoutEventArgs args)
    {
        Rearrange();
        base.OnSubViewLayout(args);
    }
}
