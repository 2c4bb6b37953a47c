using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>A container, or a whole place with all that stands in it, was put into another place.</summary>
public sealed record Moved : Entry
{
    public const string Word = "moved";

    public override string Kind => Word;

    /// <summary>Id of the place it now stands in.</summary>
    public required string To { get; init; }

    internal override bool Handles => true;

    internal static Moved Read(EntryReader r) => new() { To = r.Text("to") };

    internal override void Write(EntryWriter w) => w.Text("to", To);

    internal override void Check(BookState state)
    {
        if (Container is not null == Place is not null)
            throw new BookRefusal("a move is of one container or of one place");
        var target = state.PlaceCalled(To);
        if (Container is not null)
        {
            if (state.ContainerCalled(Container).PlaceId == target.Id)
                throw new BookRefusal($"{Container} already stands in '{target.Name}'");
            return;
        }

        var place = state.PlaceCalled(Place);
        if (state.PathTo(target.Id).Any(p => p.Id == place.Id))
            throw new BookRefusal($"'{place.Name}' cannot be moved into '{target.Name}': that is itself or stands inside it");
        state.CheckNesting(place.Kind, To, place.Name);
        if (state.ContainersIn(place.Id, deep: true).FirstOrDefault(c => c.HandsOff is not null) is { } untouchable && Forced is null)
            throw new BookRefusal($"'{place.Name}' holds {untouchable.Id}, marked hands off ({untouchable.HandsOff}); moving it needs a reason to force it");
    }

    internal override BookState Apply(BookState state) => Container is not null
        ? state.WithContainer(state.ContainerCalled(Container) with { PlaceId = To }, this)
        : state.WithPlace(state.PlaceCalled(Place) with { Inside = To, LastDay = HappenedOn });
}
