using System.Collections.Immutable;
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

    /// <summary>Edition of the hazards on it: eu, un or us. Null in entries made before it was kept.</summary>
    public string? Rules { get; init; }

    /// <summary>What stood on it, part by part, so that it can be told when it is no longer true. Null in entries made before it was kept.</summary>
    public IReadOnlyList<LabelSaying>? Says { get; init; }

    internal static LabelPrinted Read(EntryReader r) => new()
    {
        Stock = r.TextOrNull("stock"),
        Rules = r.TextOrNull("rules"),
        Says = r.List("says", LabelSaying.Read),
    };

    internal override void Write(EntryWriter w)
    {
        w.Text("stock", Stock);
        w.Text("rules", Rules);
        w.List("says", Says, (s, inner) => s.Write(inner));
    }

    private protected override Container Change(Container container) => container with
    {
        LabelPrintedOn = HappenedOn,
        LabelRules = Rules,
        LabelSays = Says?.ToImmutableList(),
    };
}
