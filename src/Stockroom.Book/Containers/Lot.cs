using Stockroom.Book.Encoding;

namespace Stockroom.Book.Containers;

/// <summary>How a content came to be here.</summary>
public enum LotOrigin
{
    Bought = 0,
    Made,
    Found,
    Split,
}

/// <summary>Where a content came from.</summary>
public sealed record Lot
{
    public required LotOrigin How { get; init; }

    /// <summary>Where it came from, in words: "estate of a chemistry teacher", "own synthesis".</summary>
    public string? Origin { get; init; }

    public string? Supplier { get; init; }

    /// <summary>The maker's lot or batch number.</summary>
    public string? Batch { get; init; }

    /// <summary>The container it was split from.</summary>
    public ContainerId? From { get; init; }

    /// <summary>Day the content was made or filled, where that is older than its coming here.</summary>
    public DateOnly? MadeOn { get; init; }

    public string? Note { get; init; }

    public static string WordOf(LotOrigin how) => how switch
    {
        LotOrigin.Bought => "bought",
        LotOrigin.Made => "made",
        LotOrigin.Found => "found",
        _ => "split",
    };

    /// <summary>Reads a word as the ledger and the keeper write it.</summary>
    /// <exception cref="BookRefusal">Not one of bought, made, found, split.</exception>
    public static LotOrigin ParseOrigin(string word) => word.Trim().ToLowerInvariant() switch
    {
        "bought" => LotOrigin.Bought,
        "made" => LotOrigin.Made,
        "found" => LotOrigin.Found,
        "split" => LotOrigin.Split,
        _ => throw new BookRefusal($"'{word}' is not how a lot comes to be; it is one of: bought, made, found, split"),
    };

    internal static Lot Read(EntryReader r) => new()
    {
        How = ParseOrigin(r.Text("how")),
        Origin = r.TextOrNull("origin"),
        Supplier = r.TextOrNull("supplier"),
        Batch = r.TextOrNull("batch"),
        From = r.IdOrNull("from"),
        MadeOn = r.DayOrNull("made_on"),
        Note = r.TextOrNull("note"),
    };

    internal void Write(EntryWriter w)
    {
        w.Text("how", WordOf(How));
        w.Text("origin", Origin);
        w.Text("supplier", Supplier);
        w.Text("batch", Batch);
        w.Id("from", From);
        w.Day("made_on", MadeOn);
        w.Text("note", Note);
    }
}
