using Stockroom.Book.Containers;
using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>A test was made: "peroxides" with "25 mg/L", "litmus" with "acid".</summary>
public sealed record Tested : ContainerEntry
{
    public const string Word = "tested";

    public override string Kind => Word;

    public required string What { get; init; }

    public required string Result { get; init; }

    internal override bool Handles => true;

    internal static Tested Read(EntryReader r) => new() { What = r.Text("what"), Result = r.Text("result") };

    internal override void Write(EntryWriter w)
    {
        w.Text("what", What);
        w.Text("result", Result);
    }

    private protected override void Check(BookState state, Container container)
    {
        Limits.Words(Container, "what was tested", What);
        Limits.Words(Container, "the result of the test", Result);
    }

    private protected override Container Change(Container container) => container with
    {
        LastTested = container.LastTested.SetItem(What, new TestResult(Number, HappenedOn, Result)),
    };
}
