using Stockroom.Assessment.Neighbours.ClassTables;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Neighbours;

/// <summary>Why two contents may not stand together: one rule that applies to them.</summary>
/// <param name="FamilyA">What the first is, in plain words.</param>
/// <param name="FamilyB">What the second is.</param>
/// <param name="Separation">The least the rule asks for.</param>
/// <param name="ByAir">True where shared air alone is enough; trays do not help then.</param>
/// <param name="ABreathes">True where it is the first whose vapour does the harm.</param>
/// <param name="Would">What could happen, worst first.</param>
/// <param name="Product">What would form, where it matters.</param>
/// <param name="OnlyIf">A third partner or a condition without which nothing happens.</param>
/// <param name="Cause">The rule in a few words.</param>
/// <param name="Source">Where the rule comes from.</param>
/// <param name="Verified">False where the source was not read for it.</param>
/// <param name="Order">Place of the rule in the tables, for a stable order.</param>
public sealed record PairReason(
    string FamilyA,
    string FamilyB,
    Separation Separation,
    bool ByAir,
    bool ABreathes,
    IReadOnlyList<string> Would,
    string? Product,
    string? OnlyIf,
    string Cause,
    Provenance Source,
    bool Verified,
    int Order)
{
    /// <summary>Both plain names, in the order of the question.</summary>
    public IReadOnlyList<string> Families => [FamilyA, FamilyB];

    /// <summary>What a break could bring comes first where it is fire, explosion or gas; else what the air does every day.</summary>
    internal int Urgency => ByAir ? 1 : OnlyIf is null && Would.Any(Consequences.NeedsOwnCabinet) ? 0 : 2;

    internal PairReason Flipped() => this with { FamilyA = FamilyB, FamilyB = FamilyA, ABreathes = ByAir && !ABreathes };
}

/// <summary>What two contents are to each other.</summary>
public sealed record PairJudgement
{
    public required string A { get; init; }

    public required string B { get; init; }

    /// <summary>The least the two need: the stricter of contact, air included, and the class table.</summary>
    public required Separation Separation { get; init; }

    /// <summary>The least the two need where their air cannot meet: flame-sealed, or in a ventilated cabinet.</summary>
    public required Separation WithoutAir { get; init; }

    /// <summary>What contact alone asks for, air included.</summary>
    public Separation ContactSeparation { get; init; }

    /// <summary>What the class table says; null where none was chosen.</summary>
    public ClassJudgement? ClassTable { get; init; }

    /// <summary>Which layer asks for the most: "contact", "class table", "both", or "neither" where the two may share a tray.</summary>
    public string Spoke => Separation == Separation.SameTray
        ? "neither"
        : ContactSeparation < Separation ? "class table" : ClassTable?.Separation == Separation ? "both" : "contact";

    /// <summary>Names of those that must not stand over the other.</summary>
    public required IReadOnlyList<string> NeverAbove { get; init; }

    internal bool ANeverAbove { get; init; }

    internal bool BNeverAbove { get; init; }

    /// <summary>True where shared air alone is enough to harm.</summary>
    public required bool Vapour { get; init; }

    /// <summary>The class table's word as a reason beside those of contact; null where it asks for nothing.</summary>
    internal PairReason? ClassReason { get; init; }

    /// <summary>The contact rules that apply, strictest first.</summary>
    public required IReadOnlyList<PairReason> Reasons { get; init; }

    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>True where nothing stands against the two in one tray, whichever is above.</summary>
    public bool IsFree => Separation == Separation.SameTray && NeverAbove.Count == 0;

    internal PairJudgement Flipped() => this with
    {
        A = B,
        B = A,
        ANeverAbove = BNeverAbove,
        BNeverAbove = ANeverAbove,
        NeverAbove = [.. NeverAbove.Reverse()],
        ClassTable = ClassTable?.Flipped(),
        ClassReason = ClassReason?.Flipped(),
        Reasons = [.. Reasons.Select(r => r.Flipped())],
    };
}
