using System.Collections.Immutable;
using Stockroom.Book.Containers;
using Stockroom.Book.Entries;
using Stockroom.Book.Places;

namespace Stockroom.Book;

/// <summary>What the ledger's entries add up to. Immutable: every change gives another state.</summary>
public sealed partial record BookState
{
    public static readonly BookState Empty = new();

    public ImmutableDictionary<ContainerId, Container> Containers { get; private init; } = ImmutableDictionary<ContainerId, Container>.Empty;

    public ImmutableDictionary<string, Place> Places { get; private init; } = ImmutableDictionary.Create<string, Place>(StringComparer.Ordinal);

    /// <summary>First serial never given to a container, undone ones included.</summary>
    internal long NextSerial { get; private init; }

    /// <summary>Containers still there, by id.</summary>
    public IEnumerable<Container> Present => Containers.Values.Where(c => !c.IsRetired).OrderBy(c => c.Id);

    /// <summary>An id no container has had yet. Ask again after each booking, or pass those already taken.</summary>
    public ContainerId NewId(params IEnumerable<ContainerId> taken)
    {
        var used = taken.ToHashSet();
        var id = ContainerId.AtOrAfter(NextSerial);
        while (used.Contains(id) || Containers.ContainsKey(id))
            id = ContainerId.AtOrAfter(id.Serial + 1);
        return id;
    }

    /// <summary>A container by its id.</summary>
    /// <exception cref="BookRefusal">No id is given, or this book has no such container.</exception>
    public Container ContainerCalled(ContainerId? id)
    {
        if (id is null)
            throw new BookRefusal("a container's id is missing; it looks like K4T7X");
        return Containers.GetValueOrDefault(id) ?? throw new BookRefusal($"there is no container {id} in this book");
    }

    /// <summary>Containers by the lot they come from; one split from another belongs to the other's lot.</summary>
    public IEnumerable<LotHoldings> Lots =>
        Containers.Values
            .GroupBy(RootOf)
            .OrderBy(g => g.Key)
            .Select(g => new LotHoldings(g.Key, Containers[g.Key].Lot, [.. g.OrderBy(c => c.Id)]));

    internal BookState WithContainer(Container container, Entry entry)
    {
        var history = container.History;
        return this with
        {
            Containers = Containers.SetItem(container.Id, container with
            {
                History = history.Count > 0 && history[^1] == entry.Number ? history : history.Add(entry.Number),
                LastDay = entry.HappenedOn > container.LastDay ? entry.HappenedOn : container.LastDay,
            }),
        };
    }

    internal BookState WithPlace(Place place) => this with { Places = Places.SetItem(place.Id, place) };

    /// <summary>The state in which an id counts as given out for good.</summary>
    internal BookState Reserving(Entry entry) => entry is Received { Container: { } id } && id.Serial >= NextSerial
        ? this with { NextSerial = id.Serial + 1 }
        : this;

    private ContainerId RootOf(Container container)
    {
        var seen = new HashSet<ContainerId>();
        while (container.Lot.From is { } from && seen.Add(container.Id) && Containers.TryGetValue(from, out var source))
            container = source;
        return container.Id;
    }
}

/// <summary>One lot: the container it came in, where it came from, and all containers it is now in.</summary>
public sealed record LotHoldings(ContainerId Root, Lot Lot, IReadOnlyList<Container> Containers);
