using Stockroom.Book.Containers;

namespace Stockroom.Book.Entries;

/// <summary>An entry that happens to one container already in the book.</summary>
public abstract record ContainerEntry : Entry
{
    internal override void Check(BookState state) => Check(state, Subject(state));

    internal override BookState Apply(BookState state) =>
        state.WithContainer(Change(Subject(state)), this);

    /// <summary>Refuses what cannot be for this container.</summary>
    private protected virtual void Check(BookState state, Container container)
    {
    }

    /// <summary>The container after the entry.</summary>
    private protected virtual Container Change(Container container) => container;

    private Container Subject(BookState state) => state.ContainerCalled(Container);
}
