using Stockroom.Book.Containers;
using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>A label was printed.</summary>
public sealed record LabelPrinted : ContainerEntry
{
    public const string Word = "label printed";

    public override string Kind => Word;

    /// <summary>The label stock it was printed on.</summary>
    public string? Stock { get; init; }

    internal static LabelPrinted Read(EntryReader r) => new() { Stock = r.TextOrNull("stock") };

    internal override void Write(EntryWriter w) => w.Text("stock", Stock);

    private protected override Container Change(Container container) => container with { LabelPrintedOn = HappenedOn };
}
