using Stockroom.Book.Containers;
using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>The container left the collection: used up, given away, disposed of.</summary>
public sealed record Retired : ContainerEntry
{
    public const string Word = "retired";

    public override string Kind => Word;

    public required string Reason { get; init; }

    internal override bool Handles => true;

    internal static Retired Read(EntryReader r) => new() { Reason = r.Text("reason") };

    internal override void Write(EntryWriter w) => w.Text("reason", Reason);

    private protected override void Check(BookState state, Container container) =>
        Limits.Words(Container, "the reason for retiring it", Reason);

    private protected override Container Change(Container container) =>
        container with { RetiredOn = HappenedOn, RetiredBecause = Reason };
}
