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

    /// <summary>Temperature of the gas over the content as the vessel was closed, in degrees C; null where nobody said.</summary>
    public decimal? GasCelsius { get; init; }

    /// <summary>Absolute pressure of that gas then, in bar, 0 for a vacuum; null where nobody said.</summary>
    public decimal? GasBar { get; init; }

    internal override bool Handles => true;

    internal static Sealed Read(EntryReader r) => new()
    {
        Closure = r.TextOrNull("closure"),
        GrossGrams = r.NumberOrNull("gross_g"),
        TareGrams = r.NumberOrNull("tare_g"),
        GasCelsius = r.NumberOrNull("gas_c"),
        GasBar = r.NumberOrNull("gas_bar"),
    };

    internal override void Write(EntryWriter w)
    {
        w.Text("closure", Closure);
        w.Number("gross_g", GrossGrams);
        w.Number("tare_g", TareGrams);
        w.Number("gas_c", GasCelsius);
        w.Number("gas_bar", GasBar);
    }

    private protected override void Check(BookState state, Container container)
    {
        if (Closure is not null)
            Limits.Words(Container, "the closure", Closure);
        Limits.Mass($"{Container}: a gross mass", GrossGrams);
        Limits.Mass($"{Container}: a tare", TareGrams);
        Limits.Temperature(Container, GasCelsius);
        Limits.GasPressure(Container, GasBar);
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
            Refittings = container.Refittings.Add(new Refitting(Number, HappenedOn, OtherCover: false)),
            SealedAtCelsius = GasCelsius,
            SealedAtBar = GasBar,
            TareGrams = TareGrams ?? (otherClosure ? null : container.TareGrams),
            LastGrossGrams = GrossGrams ?? container.LastGrossGrams,
            Weighings = GrossGrams is { } gross
                ? container.Weighings.Add(new Weighing(Number, HappenedOn, gross, null, null))
                : container.Weighings,
        };
    }
}
