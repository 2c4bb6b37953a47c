using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Rounds;

/// <summary>What the days of a round rule count from.</summary>
public enum CountFrom
{
    /// <summary>The first opening; a container never opened is not meant.</summary>
    Opened = 0,

    Received,

    /// <summary>Receipt, while it was never opened.</summary>
    Unopened,
}

/// <summary>Something that must be looked at again and again.</summary>
/// <param name="Name">Short name of the rule.</param>
/// <param name="Subjects">Substances or preparations it is for; "any" for all.</param>
/// <param name="What">What to do, as an order: "test for peroxides".</param>
/// <param name="From">What the days count from.</param>
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
    CountFrom From,
    int FirstDays,
    int RepeatDays,
    string ResetBy,
    string Because,
    string AtLimit,
    Provenance Provenance)
{
    public bool IsForAny => Subjects.Contains("any");
}
