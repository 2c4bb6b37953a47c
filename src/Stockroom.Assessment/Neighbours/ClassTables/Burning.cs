namespace Stockroom.Assessment.Neighbours.ClassTables;

/// <summary>Whether a content burns, by its contact families; where nothing is written of it, by its formula.</summary>
internal static class Burning
{
    // Less of what burns than this, in water, does not. A figure of our own.
    private const decimal FromPercent = 20m;

    private static readonly string[] Families =
    [
        "flammable-gas", "flammable-liquid", "flammable-solid", "combustible", "alcohol", "carbonyl", "amine", "nitro", "monomer", "polar-aprotic",
        "sulfur", "red-phosphorus", "white-phosphorus", "charcoal", "pyrophoric", "self-heating", "hydrazine", "acetylene", "organic-peroxide",
        "organic-acid", "acid-anhydride", "isocyanate", "light-metal-powder",
    ];

    public static bool Is(ContactProfile profile)
    {
        if (profile.Content.WaterPercent > 100m - FromPercent)
            return false;
        return Families.Any(profile.Carries)
            || profile.Content.Parts.Any(p => p.Percent >= FromPercent && profile.Facts.FamiliesOf(p.Substance.Name) is null
                && p.Substance.Formula is { } formula && formula.Contains("C") && formula.Contains("H"));
    }
}
