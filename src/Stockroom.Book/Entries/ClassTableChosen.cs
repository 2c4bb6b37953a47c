using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>The keeper chose a published table of classes by which shelves are judged besides contact, or none.</summary>
public sealed record ClassTableChosen : Entry
{
    public const string Word = "class table chosen";

    private static readonly string[] Tables = ["none", "road", "sea", "storage"];

    public override string Kind => Word;

    /// <summary>none, road, sea or storage.</summary>
    public required string Table { get; init; }

    internal static ClassTableChosen Read(EntryReader r) => new() { Table = r.Text("table") };

    internal override void Write(EntryWriter w) => w.Text("table", Table);

    internal override void Check(BookState state)
    {
        if (!Tables.Contains(Table))
            throw new BookRefusal($"'{Table}' is not a class table; it is one of: {string.Join(", ", Tables)}");
    }

    internal override BookState Apply(BookState state) => state.WithClassTable(Table);
}
