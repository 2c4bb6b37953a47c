namespace Stockroom.Chemistry.Hazards;

/// <summary>A profile that the keeper wrote, marked so that every answer that rests on it says so.</summary>
internal static class OwnProfile
{
    /// <summary>The profile with each category as the keeper's own and a note of what it replaces.</summary>
    /// <param name="name">Preferred name of the substance.</param>
    /// <param name="profile">What the keeper says.</param>
    /// <param name="replaced">What the catalogue says; null where it has nothing.</param>
    public static HazardProfile Marked(string name, HazardProfile profile, HazardProfile? replaced) => profile with
    {
        Name = name,
        Categories = [.. profile.Categories.Select(c => c with { Status = EntryStatus.Own })],
        OwnNote = Note(name, profile, replaced),
    };

    private static string Note(string name, HazardProfile profile, HazardProfile? replaced)
    {
        var source = profile.Categories.Select(c => c.Provenance).Concat(profile.Limits.Select(l => l.Provenance)).Concat(profile.Estimates.Select(e => e.Provenance)).FirstOrDefault()
            ?? profile.NotClassifiedBy;
        var says = source is null ? "" : $" ({source})";
        var instead = replaced switch
        {
            null or { Knowledge: HazardKnowledge.Unknown } => "; the catalogue has nothing on it",
            { Knowledge: HazardKnowledge.NotClassified } => "; the catalogue says that no classification applies",
            _ => $"; the catalogue says {string.Join(", ", replaced.Categories.Select(c => c.Category == "EUH" ? c.Statement : $"{c.Category} {c.Statement}".TrimEnd()))}",
        };
        return $"{name}: the keeper's own classification is used{says}{instead}";
    }
}
