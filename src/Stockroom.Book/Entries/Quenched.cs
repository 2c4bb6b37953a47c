using Stockroom.Book.Containers;
using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>Some or all of the content was made harmless by reaction.</summary>
public sealed record Quenched : ContainerEntry
{
    public const string Word = "quenched";

    public override string Kind => Word;

    /// <summary>Reagent it was quenched with.</summary>
    public required string With { get; init; }

    public required string Quantity { get; init; }

    public required decimal Grams { get; init; }

    public BookedDensity? Density { get; init; }

    internal override bool Handles => true;

    internal static Quenched Read(EntryReader r) => new()
    {
        With = r.Text("with"),
        Quantity = r.Text("quantity"),
        Grams = r.Number("mass_g"),
        Density = r.Nested("density", BookedDensity.Read),
    };

    internal override void Write(EntryWriter w)
    {
        w.Text("with", With);
        w.Text("quantity", Quantity);
        w.Number("mass_g", Grams);
        w.Nested("density", Density, (d, inner) => d.Write(inner));
    }

    private protected override void Check(BookState state, Container container)
    {
        Limits.Words(Container, "the reagent it was quenched with", With);
        Limits.Mass($"{Container}: a quenched amount", Grams);
        Limits.Available(container, Grams);
    }

    private protected override Container Change(Container container) => container with
    {
        NetGrams = container.NetGrams - Grams,
        Draws = container.Draws.Add(new Draw(Number, HappenedOn, Quantity, Grams, null)),
    };
}
