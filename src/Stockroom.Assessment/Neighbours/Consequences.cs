using System.Collections.Frozen;

namespace Stockroom.Assessment.Neighbours;

/// <summary>The words for what could happen, and how bad each is.</summary>
public static class Consequences
{
    // The worst first. What ends in fire, explosion or a poisonous or flammable gas needs a cabinet of its own at least.
    private static readonly string[] Ranked =
    [
        "explosion", "toxic gas", "fire", "flammable gas", "polymerisation", "decomposition", "sensitive product", "pressure",
        "toxic product", "spatter", "heat", "structural failure", "fuming", "corrosion", "alloying", "tarnish",
    ];

    private static readonly FrozenDictionary<string, int> Ranks = Ranked.Select((w, i) => (w, i)).ToFrozenDictionary(x => x.w, x => x.i, StringComparer.Ordinal);

    public static IReadOnlyList<string> All => Ranked;

    /// <summary>0 for the worst; unknown words rank last.</summary>
    public static int Rank(string consequence) => Ranks.GetValueOrDefault(consequence, Ranked.Length);

    /// <summary>True for what a shared cabinet cannot be allowed to see.</summary>
    public static bool NeedsOwnCabinet(string consequence) => consequence is "explosion" or "toxic gas" or "fire" or "flammable gas";
}
