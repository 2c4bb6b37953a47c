using Stockroom.Book;

namespace Stockroom.Assessment.Concerns;

/// <summary>How bad it is.</summary>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Notice = 0,

    /// <summary>Put right soon.</summary>
    Warning,

    /// <summary>Someone could be hurt.</summary>
    Danger,
}

/// <summary>Something that is wrong now, with its reason and who says so.</summary>
/// <param name="Severity">How bad it is.</param>
/// <param name="Kind">Which concern found it: "neighbours", "place", "seal", "material", "ampoule", "orphan", "hands off".</param>
/// <param name="What">One sentence that a volunteer understands.</param>
/// <param name="Because">The reason with its figures.</param>
/// <param name="Source">The rule, table or measurement.</param>
/// <param name="Since">Since when, where that is known.</param>
/// <param name="Containers">Whom it concerns, the one to act on first.</param>
public sealed record WrongItem(
    Severity Severity, string Kind, string What, string Because, string Source, DateOnly? Since, IReadOnlyList<ContainerId> Containers);
