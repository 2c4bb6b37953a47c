namespace Stockroom.Assessment.Neighbours.ClassTables;

/// <summary>What a class table says of two contents.</summary>
public sealed record ClassJudgement
{
    public required ClassTable Table { get; init; }

    /// <summary>Class of the first: transport class or storage class; "not regulated"; null where it is not known.</summary>
    public required string? ClassA { get; init; }

    public required string? ClassB { get; init; }

    /// <summary>How the classes were found, each a sentence.</summary>
    public required string BecauseA { get; init; }

    public required string BecauseB { get; init; }

    /// <summary>The rows of the table that spoke, which may be those of subsidiary hazards; null where the table has none for the two.</summary>
    public string? RowA { get; init; }

    public string? RowB { get; init; }

    /// <summary>As printed; empty for a blank cell; null where nothing is known.</summary>
    public required string? Code { get; init; }

    public required string Meaning { get; init; }

    public required string Clause { get; init; }

    /// <summary>What answers to it on a shelf, by analogy; null where nothing is known.</summary>
    public required Separation? Separation { get; init; }

    /// <summary>False where the source was not read for the cell.</summary>
    public bool Verified { get; init; }

    public string? Source { get; init; }

    /// <summary>What fires, leaks or poisons the table guards against, for these classes.</summary>
    public IReadOnlyList<string> Would { get; init; } = [];

    internal ClassJudgement Flipped() => this with
    {
        ClassA = ClassB, ClassB = ClassA, BecauseA = BecauseB, BecauseB = BecauseA, RowA = RowB, RowB = RowA,
    };
}
