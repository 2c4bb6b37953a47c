using Stockroom.Book.Containers;
using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>A container was marked hands off, the mark was lifted, or only a note was made.</summary>
public sealed record Marked : ContainerEntry
{
    public const string Word = "marked";

    public override string Kind => Word;

    /// <summary>True sets the mark, false lifts it, null leaves it.</summary>
    public bool? HandsOff { get; init; }

    /// <summary>Why the mark is set or lifted.</summary>
    public string? Reason { get; init; }

    internal override bool AllowedWhenRetired => HandsOff is null;

    internal static Marked Read(EntryReader r) => new() { HandsOff = r.FlagOrNull("hands_off"), Reason = r.TextOrNull("reason") };

    internal override void Write(EntryWriter w)
    {
        w.Flag("hands_off", HandsOff);
        w.Text("reason", Reason);
    }

    private protected override void Check(BookState state, Container container)
    {
        if (HandsOff is null)
            Limits.Words(Container, "the note", Note);
        else
            Limits.Words(Container, HandsOff.Value ? "the reason for hands off" : "the reason for lifting hands off", Reason);
        if (HandsOff == false && container.HandsOff is null)
            throw new BookRefusal($"{Container} is not marked hands off");
    }

    private protected override Container Change(Container container) =>
        HandsOff is { } mark ? container with { HandsOff = mark ? Reason : null } : container;
}
