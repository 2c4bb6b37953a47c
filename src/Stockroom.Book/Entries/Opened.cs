using Stockroom.Book.Containers;
using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>The container was opened; the first opening starts the clock of what spoils in air.</summary>
public sealed record Opened : ContainerEntry
{
    public const string Word = "opened";

    public override string Kind => Word;

    internal override bool Handles => true;

    internal static Opened Read(EntryReader r) => new();

    internal override void Write(EntryWriter w)
    {
    }

    private protected override Container Change(Container container) =>
        container with { OpenedOn = container.OpenedOn ?? HappenedOn };
}
