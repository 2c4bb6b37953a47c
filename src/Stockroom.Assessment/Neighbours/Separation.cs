using System.Diagnostics.CodeAnalysis;

namespace Stockroom.Assessment.Neighbours;

/// <summary>How far two things stand apart, or must, from the least to the most.</summary>
public enum Separation
{
    /// <summary>Nothing keeps a leak of one from the other.</summary>
    SameTray = 0,

    /// <summary>Each in its own leak-tight tray, neither above the other, in one cabinet.</summary>
    OwnTray,

    /// <summary>Different cabinets.</summary>
    OwnCabinet,

    /// <summary>Different rooms, or cabinets that are not next to each other.</summary>
    FarApart,
}

/// <summary>The words of the separation scale.</summary>
public static class SeparationWords
{
    public static IReadOnlyList<string> All { get; } = ["same tray", "own tray", "own cabinet", "far apart"];

    public static string Of(Separation separation) => All[(int)separation];

    public static bool TryParse(string words, [NotNullWhen(true)] out Separation? separation)
    {
        for (var i = 0; i < All.Count; i++)
        {
            if (All[i] == words)
            {
                separation = (Separation)i;
                return true;
            }
        }

        separation = null;
        return false;
    }
}
