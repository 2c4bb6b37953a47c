namespace Stockroom.Verbs;

/// <summary>All verbs, in the order in which the help shows them. A new verb is a file beside this one and a line here.</summary>
internal static class VerbList
{
    public static IReadOnlyList<IVerb> All { get; } =
    [
        new FactsVerb(),
    ];
}
