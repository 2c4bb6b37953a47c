using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Rounds;

/// <summary>Something that must be looked at again and again.</summary>
/// <param name="Name">Short name of the rule.</param>
/// <param name="Subjects">Substances or preparations it is for; "any" for all.</param>
/// <param name="What">What to do, as an order: "test for peroxides".</param>
/// <param name="FromOpening">True where the days count from the first opening, false where they count from receipt.</param>
/// <param name="FirstDays">Days until the first time.</param>
/// <param name="RepeatDays">Days from one time to the next.</param>
/// <param name="ResetBy">The test, as the ledger calls it, that starts the count anew.</param>
/// <param name="Because">What goes wrong.</param>
/// <param name="AtLimit">What to do when the day has come.</param>
/// <param name="Provenance">Who says so.</param>
public sealed record RoundRule(
    string Name,
    IReadOnlyList<string> Subjects,
    string What,
    bool FromOpening,
    int FirstDays,
    int RepeatDays,
    string ResetBy,
    string Because,
    string AtLimit,
    Provenance Provenance)
{
    public bool IsForAny => Subjects.Contains("any");
}
