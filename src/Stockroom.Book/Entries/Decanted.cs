using Stockroom.Book.Containers;
using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>
/// Something was poured from one container into another; what the one loses the other gains. A new target is received
/// first, in the same transaction, split from this one and with a net mass of 0 g.
/// </summary>
public sealed record Decanted : Entry
{
    public const string Word = "decanted";

    public override string Kind => Word;

    public required ContainerId Into { get; init; }

    public required string Quantity { get; init; }

    public required decimal Grams { get; init; }

    public BookedDensity? Density { get; init; }

    internal override bool Handles => true;

    internal override IEnumerable<ContainerId> Containers => [.. base.Containers, Into];

    internal static Decanted Read(EntryReader r) => new()
    {
        Into = r.IdOrNull("into") ?? throw new FormatException("'into' is missing"),
        Quantity = r.Text("quantity"),
        Grams = r.Number("mass_g"),
        Density = r.Nested("density", BookedDensity.Read),
    };

    internal override void Write(EntryWriter w)
    {
        w.Id("into", Into);
        w.Text("quantity", Quantity);
        w.Number("mass_g", Grams);
        w.Nested("density", Density, (d, inner) => d.Write(inner));
    }

    internal override void Check(BookState state)
    {
        var source = state.ContainerCalled(Container);
        state.ContainerCalled(Into);
        if (Into == Container)
            throw new BookRefusal($"{Container} cannot be decanted into itself");
        Limits.Mass($"{Container}: a decanted amount", Grams);
        Limits.Available(source, Grams);
    }

    internal override BookState Apply(BookState state)
    {
        var source = state.ContainerCalled(Container);
        var target = state.ContainerCalled(Into);
        return state
            .WithContainer(
                source with
                {
                    NetGrams = source.NetGrams - Grams,
                    Draws = source.Draws.Add(new Draw(Number, HappenedOn, Quantity, Grams, Into)),
                },
                this)
            .WithContainer(
                target with
                {
                    NetGrams = target.NetGrams + Grams,
                    Fills = target.Fills.Add(new Fill(Number, HappenedOn, Quantity, Grams, source.Id)),
                },
                this);
    }
}
