using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>An earlier entry ought to have said something else. It counts from the day the earlier one happened.</summary>
public sealed record Corrected : Entry
{
    public const string Word = "corrected";

    public override string Kind => Word;

    /// <summary>Number of the entry corrected.</summary>
    public required long Entry { get; init; }

    public required IReadOnlyList<FieldChange> Changes { get; init; }

    public required string Reason { get; init; }

    internal override bool AllowedWhenRetired => true;

    internal static Corrected Read(EntryReader r) => new()
    {
        Entry = r.Integer("entry"),
        Changes = r.List("changes", c => new FieldChange(c.Text("field"), c.TextOrNull("value"))) ?? [],
        Reason = r.Text("reason"),
    };

    internal override void Write(EntryWriter w)
    {
        w.Integer("entry", Entry);
        w.List("changes", Changes, (c, inner) =>
        {
            inner.Text("field", c.Field);
            inner.Text("value", c.Value, limitOf: c.Field);
        });
        w.Text("reason", Reason);
    }

    internal override void Check(BookState state)
    {
        if (Changes.Count == 0)
            throw new BookRefusal($"a correction of entry {Entry} needs a field and its new value");
        Limits.Words(Container, "the reason for the correction", Reason);
    }

    internal override BookState Apply(BookState state) =>
        Container is not null && state.Containers.TryGetValue(Container, out var container) ? state.WithContainer(container, this) : state;
}
