using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>
/// One line of the ledger. Number, transaction, time of booking, keeper and previous hash are given by the book when it is
/// booked; the rest is what happened.
/// </summary>
public abstract record Entry
{
    /// <summary>1, 2, 3... without gaps; 0 before it is booked.</summary>
    public long Number { get; init; }

    /// <summary>Number of the transaction it was booked with.</summary>
    public long Transaction { get; init; }

    public abstract string Kind { get; }

    /// <summary>The container it is about, if any.</summary>
    public ContainerId? Container { get; init; }

    /// <summary>The place it is about, if any; where a container goes to stands in the entry's own fields.</summary>
    public string? Place { get; init; }

    /// <summary>When it happened, with the offset of the keeper's clock. Entries of one day count in the order of booking.</summary>
    public DateTimeOffset HappenedAt { get; init; }

    /// <summary>When it was booked.</summary>
    public DateTimeOffset RecordedAt { get; init; }

    /// <summary>Who booked it.</summary>
    public string By { get; init; } = "";

    /// <summary>SHA-256 of the entry before it.</summary>
    public string Previous { get; init; } = "";

    public string? Note { get; init; }

    /// <summary>Reason for doing it to a container marked hands off; null where no rule was set aside.</summary>
    public string? Forced { get; init; }

    public DateOnly HappenedOn => DateOnly.FromDateTime(HappenedAt.DateTime);

    /// <summary>True for the entry that brings its container or place into the book.</summary>
    internal virtual bool IsFirstOfItsSubject => false;

    /// <summary>True if it means opening, moving or touching the container, which "hands off" forbids.</summary>
    internal virtual bool Handles => false;

    /// <summary>True if it may be booked on a container that is no longer there.</summary>
    internal virtual bool AllowedWhenRetired => false;

    /// <summary>Containers whose state it reads or changes.</summary>
    internal virtual IEnumerable<ContainerId> Containers => Container is { } id ? [id] : [];

    internal abstract void Write(EntryWriter w);

    /// <summary>Refuses what cannot be, given the state before it.</summary>
    internal abstract void Check(BookState state);

    internal abstract BookState Apply(BookState state);
}

/// <summary>One field of an entry and what it ought to have said; null takes the value away.</summary>
public sealed record FieldChange(string Field, string? Value);
