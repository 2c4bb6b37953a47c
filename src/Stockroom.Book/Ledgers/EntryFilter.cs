using Stockroom.Book.Entries;

namespace Stockroom.Book.Ledgers;

/// <summary>Which entries are wanted; what is null does not matter.</summary>
public sealed record EntryFilter
{
    public static readonly EntryFilter All = new();

    public ContainerId? Container { get; init; }

    public string? Place { get; init; }

    public string? Kind { get; init; }

    /// <summary>Happened on or before this day.</summary>
    public DateOnly? HappenedBy { get; init; }

    /// <summary>Booked on or before this day.</summary>
    public DateOnly? RecordedBy { get; init; }

    public bool Fits(Entry entry) =>
        (Container is null || entry.Containers.Contains(Container))
        && (Place is null || entry.Place == Place || entry is Moved m && m.To == Place || entry is Received r && r.To == Place)
        && (Kind is null || entry.Kind == Kind)
        && (HappenedBy is null || entry.HappenedOn <= HappenedBy)
        && (RecordedBy is null || DateOnly.FromDateTime(entry.RecordedAt.DateTime) <= RecordedBy);
}
