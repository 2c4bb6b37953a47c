using Stockroom.Book.Entries;

namespace Stockroom.Book;

/// <summary>What holds for entries of every kind: who, when, and on what they may be booked.</summary>
internal static class Rules
{
    private static readonly TimeSpan ClockSkew = TimeSpan.FromDays(1);

    /// <summary>Refuses an entry that cannot be, given the state before it.</summary>
    /// <exception cref="BookRefusal">The entry cannot be, in one line.</exception>
    public static void Check(Entry entry, BookState state)
    {
        CheckWhoAndWhen(entry);
        foreach (var id in entry.IsFirstOfItsSubject ? [] : entry.Containers)
            CheckSubject(entry, state, id);
        entry.Check(state);
    }

    /// <summary>Refuses an entry nobody signs, of an impossible day, or older than a container it is about, by the container as it now is.</summary>
    public static void CheckSignedAndDated(Entry entry, BookState state)
    {
        CheckWhoAndWhen(entry);
        foreach (var id in entry.Containers)
        {
            if (state.Containers.GetValueOrDefault(id) is { } container && entry.HappenedOn < container.ReceivedOn)
                throw new BookRefusal($"{id} cannot be {entry.Kind} on {entry.HappenedOn:yyyy-MM-dd}; it was received on {container.ReceivedOn:yyyy-MM-dd}");
        }
    }

    private static void CheckWhoAndWhen(Entry entry)
    {
        if (string.IsNullOrWhiteSpace(entry.By))
            throw new BookRefusal("an entry needs the name of who books it");
        Limits.NotTooOld("a date of", entry.HappenedOn);
        if (entry.HappenedAt > entry.RecordedAt + ClockSkew)
            throw new BookRefusal($"{entry.HappenedAt:yyyy-MM-dd} lies in the future; today is {entry.RecordedAt:yyyy-MM-dd}");
    }

    private static void CheckSubject(Entry entry, BookState state, ContainerId id)
    {
        var container = state.ContainerCalled(id);
        if (container.RetiredOn is { } retired && !entry.AllowedWhenRetired)
            throw new BookRefusal($"{id} was retired on {retired:yyyy-MM-dd} and cannot be {entry.Kind}");
        if (container.HandsOff is { } reason && entry.Handles && entry.Forced is null)
            throw new BookRefusal($"{id} is marked hands off ({reason}): do not move, open or weigh it; a reason is needed to force it");
        if (entry.Forced is not null && string.IsNullOrWhiteSpace(entry.Forced))
            throw new BookRefusal($"{id}: forcing an entry needs a reason");
    }
}
