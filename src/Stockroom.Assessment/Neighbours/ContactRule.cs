using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Neighbours;

/// <summary>One side of a rule: a family, a substance from a strength on, or anything that is not inert.</summary>
public sealed record ContactTerm(int Index, string PlainName);

/// <summary>A rule between two terms. Where it acts by air, A is what breathes out and B what is harmed.</summary>
public sealed record ContactRule(
    int Order,
    ContactTerm A,
    ContactTerm B,
    Separation Separation,
    bool ByAir,
    IReadOnlyList<string> Would,
    string? Product,
    string? OnlyIf,
    string Cause,
    bool Verified,
    Provenance Provenance);
