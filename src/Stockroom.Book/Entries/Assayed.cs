using Stockroom.Book.Containers;
using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>A strength was measured, in per cent by mass of one substance.</summary>
public sealed record Assayed : ContainerEntry
{
    public const string Word = "assayed";

    public override string Kind => Word;

    public required string Substance { get; init; }

    public required decimal Percent { get; init; }

    public string? Method { get; init; }

    internal override bool Handles => true;

    internal static Assayed Read(EntryReader r) => new()
    {
        Substance = r.Text("substance"),
        Percent = r.Number("percent"),
        Method = r.TextOrNull("method"),
    };

    internal override void Write(EntryWriter w)
    {
        w.Text("substance", Substance);
        w.Number("percent", Percent);
        w.Text("method", Method);
    }

    private protected override void Check(BookState state, Container container)
    {
        Limits.Words(Container, "the substance assayed", Substance);
        if (Percent is < 0 or > 100)
            throw new BookRefusal($"{Container}: {Percent} % by mass cannot be; it lies between 0 and 100 %");
    }

    private protected override Container Change(Container container) => container with
    {
        Assays = container.Assays.Add(new Assay(Number, HappenedOn, Substance, Percent, Method)),
    };
}
