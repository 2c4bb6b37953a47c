using Stockroom.Book.Containers;
using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>The container was sealed, or sealed anew; with another closure if one is named.</summary>
public sealed record Sealed : ContainerEntry
{
    public const string Word = "sealed";

    public override string Kind => Word;

    public string? Closure { get; init; }

    /// <summary>Gross mass in g with the new closure, if weighed.</summary>
    public decimal? GrossGrams { get; init; }

    /// <summary>Tare in g with the new closure, if known; a new closure without one makes the old tare void.</summary>
    public decimal? TareGrams { get; init; }

    internal override bool Handles => true;

    internal static Sealed Read(EntryReader r) => new()
    {
        Closure = r.TextOrNull("closure"),
        GrossGrams = r.NumberOrNull("gross_g"),
        TareGrams = r.NumberOrNull("tare_g"),
    };

    internal override void Write(EntryWriter w)
    {
        w.Text("closure", Closure);
        w.Number("gross_g", GrossGrams);
        w.Number("tare_g", TareGrams);
    }

    private protected override void Check(BookState state, Container container)
    {
        if (Closure is not null)
            Limits.Words(Container, "the closure", Closure);
        Limits.Mass($"{Container}: a gross mass", GrossGrams);
        Limits.Mass($"{Container}: a tare", TareGrams);
        if (GrossGrams < TareGrams)
            throw new BookRefusal($"{Container}: gross {GrossGrams} g is less than tare {TareGrams} g");
    }

    private protected override Container Change(Container container)
    {
        var otherClosure = Closure is not null && Closure != container.Closure;
        return container with
        {
            Closure = Closure ?? container.Closure,
            SealedOn = HappenedOn,
            TareGrams = TareGrams ?? (otherClosure ? null : container.TareGrams),
            LastGrossGrams = GrossGrams ?? container.LastGrossGrams,
            Weighings = GrossGrams is { } gross
                ? container.Weighings.Add(new Weighing(Number, HappenedOn, gross, null, null))
                : container.Weighings,
        };
    }
}
