using Stockroom.Book.Containers;
using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>The container got an outer packing (capped tube, can with absorbent, bag), or lost it.</summary>
public sealed record Packed : ContainerEntry
{
    public const string Word = "packed";

    public override string Kind => Word;

    /// <summary>Null if the packing was taken off.</summary>
    public string? Packing { get; init; }

    internal override bool Handles => true;

    internal static Packed Read(EntryReader r) => new() { Packing = r.TextOrNull("packing") };

    internal override void Write(EntryWriter w) => w.Text("packing", Packing);

    private protected override void Check(BookState state, Container container)
    {
        if (Packing is not null)
            Limits.Words(Container, "the packing", Packing);
    }

    private protected override Container Change(Container container) => container with { Packing = Packing };
}
