using Stockroom.Book.Containers;
using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>A container was marked hands off or pinned to its place, got a least strength of its own, the mark was lifted, or only a note was made.</summary>
public sealed record Marked : ContainerEntry
{
    public const string Word = "marked";

    public override string Kind => Word;

    /// <summary>True sets the mark, false lifts it, null leaves it.</summary>
    public bool? HandsOff { get; init; }

    /// <summary>True pins it to its place, so that no proposed arrangement moves it; false lets it go; null leaves it.</summary>
    public bool? Pinned { get; init; }

    /// <summary>Least strength at which the keeper still wants to use it, per cent by mass of the part it is named for; 0 lifts it; null leaves it.</summary>
    public decimal? LeastPercent { get; init; }

    /// <summary>Why the mark is set or lifted.</summary>
    public string? Reason { get; init; }

    internal override bool AllowedWhenRetired => IsNote;

    /// <summary>True where no mark is set or lifted.</summary>
    public bool IsNote => HandsOff is null && Pinned is null && LeastPercent is null;

    internal static Marked Read(EntryReader r) => new()
    {
        HandsOff = r.FlagOrNull("hands_off"),
        Pinned = r.FlagOrNull("pinned"),
        LeastPercent = r.NumberOrNull("least_percent"),
        Reason = r.TextOrNull("reason"),
    };

    internal override void Write(EntryWriter w)
    {
        w.Flag("hands_off", HandsOff);
        w.Flag("pinned", Pinned);
        w.Number("least_percent", LeastPercent);
        w.Text("reason", Reason);
    }

    private protected override void Check(BookState state, Container container)
    {
        if (LeastPercent is { } percent)
            CheckLeast(container, percent);
        if (HandsOff is not null && Pinned is not null)
            throw new BookRefusal($"{Container}: hands off and pinned are two marks; book one at a time");
        if (HandsOff is { } handsOff)
            Limits.Words(Container, handsOff ? "the reason for hands off" : "the reason for lifting hands off", Reason);
        else if (IsNote)
            Limits.Words(Container, "the note", Note);
        else if (Pinned == true)
            Limits.Words(Container, "the reason for pinning it", Reason);
        if (HandsOff == false && container.HandsOff is null)
            throw new BookRefusal($"{Container} is not marked hands off");
        if (Pinned == false && container.Pinned is null)
            throw new BookRefusal($"{Container} is not pinned");
    }

    private void CheckLeast(Container container, decimal percent)
    {
        if (HandsOff is not null || Pinned is not null)
            throw new BookRefusal($"{Container}: a least strength and another mark are two marks; book one at a time");
        if (percent is < 0 or >= 100)
            throw new BookRefusal($"{Container}: a least strength of {percent} % by mass cannot be; it lies above 0 and below 100 %");
        if (percent == 0 && container.LeastPercent is null)
            throw new BookRefusal($"{Container} has no least strength of its own");
    }

    private protected override Container Change(Container container)
    {
        if (LeastPercent is { } percent)
            return container with { LeastPercent = percent > 0 ? percent : null };
        if (HandsOff is { } handsOff)
            return container with { HandsOff = handsOff ? Reason : null };
        return Pinned is { } pinned ? container with { Pinned = pinned ? Reason : null } : container;
    }
}
