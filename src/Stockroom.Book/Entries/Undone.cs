using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>A whole transaction was taken back: its entries stay in the ledger and no longer count.</summary>
public sealed record Undone : Entry
{
    public const string Word = "undone";

    public override string Kind => Word;

    /// <summary>Number of the transaction taken back.</summary>
    public required long Undoes { get; init; }

    public required string Reason { get; init; }

    internal override bool AllowedWhenRetired => true;

    internal static Undone Read(EntryReader r) => new() { Undoes = r.Integer("undoes"), Reason = r.Text("reason") };

    internal override void Write(EntryWriter w)
    {
        w.Integer("undoes", Undoes);
        w.Text("reason", Reason);
    }

    internal override void Check(BookState state) => Limits.Words(Container, "the reason for undoing", Reason);

    internal override BookState Apply(BookState state) => state;
}
