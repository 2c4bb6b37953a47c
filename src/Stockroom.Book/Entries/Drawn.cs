using Stockroom.Book.Containers;
using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>Something was taken out and used.</summary>
public sealed record Drawn : ContainerEntry
{
    public const string Word = "drawn";

    public override string Kind => Word;

    /// <summary>As typed: "20 mL".</summary>
    public required string Quantity { get; init; }

    public required decimal Grams { get; init; }

    /// <summary>Density with which a volume became a mass.</summary>
    public BookedDensity? Density { get; init; }

    internal override bool Handles => true;

    internal static Drawn Read(EntryReader r) => new()
    {
        Quantity = r.Text("quantity"),
        Grams = r.Number("mass_g"),
        Density = r.Nested("density", BookedDensity.Read),
    };

    internal override void Write(EntryWriter w)
    {
        w.Text("quantity", Quantity);
        w.Number("mass_g", Grams);
        w.Nested("density", Density, (d, inner) => d.Write(inner));
    }

    private protected override void Check(BookState state, Container container)
    {
        Limits.Mass($"{Container}: a draw", Grams);
        Limits.Available(container, Grams);
    }

    private protected override Container Change(Container container) => container with
    {
        NetGrams = container.NetGrams - Grams,
        Draws = container.Draws.Add(new Draw(Number, HappenedOn, Quantity, Grams, null)),
    };
}
