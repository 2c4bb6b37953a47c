namespace Stockroom.Chemistry.Hazards;

/// <summary>
/// What of a profile belongs to which class, found once for each profile. It is derived, so two are always equal and a
/// changed copy of a profile makes its own.
/// </summary>
internal sealed class ProfileIndex : IEquatable<ProfileIndex>
{
    private readonly HazardProfile _of;
    private readonly Dictionary<HazardClass, (AssignedCategory[] Categories, ConcentrationLimit[] Limits)> _byClass = [];

    public ProfileIndex(HazardProfile profile)
    {
        _of = profile;
        SelfNote = SelfNoteOf(profile.Name, profile.Categories);
        HasBounds = profile.Categories.Any(c => c.OverPercent is not null || c.UpToPercent is not null);
        foreach (var hazard in HazardClasses.All)
        {
            AssignedCategory[] categories = [.. profile.Categories.Where(c => hazard.Owns(c.Category))];
            ConcentrationLimit[] limits = [.. profile.Limits.Where(l => hazard.Owns(l.Category))];
            if (categories.Length + limits.Length > 0)
                _byClass[hazard] = (categories, limits);
        }
    }

    /// <summary>True where some category holds only for a range of strengths.</summary>
    public bool HasBounds { get; }

    /// <summary>Says what is self-classified and why, at any strength; null where nothing is.</summary>
    public string? SelfNote { get; }

    /// <summary>The classes of which the profile has a category or a limit.</summary>
    public IReadOnlyCollection<HazardClass> Concerned => _byClass.Keys;

    public bool IsOf(HazardProfile profile) => ReferenceEquals(_of.Categories, profile.Categories) && ReferenceEquals(_of.Limits, profile.Limits);

    public IReadOnlyList<AssignedCategory> CategoriesOf(HazardClass hazard) => _byClass.TryGetValue(hazard, out var own) ? own.Categories : [];

    public IReadOnlyList<ConcentrationLimit> LimitsOf(HazardClass hazard) => _byClass.TryGetValue(hazard, out var own) ? own.Limits : [];

    /// <summary>Says what of these categories is self-classified and why; null where nothing is.</summary>
    public static string? SelfNoteOf(string name, IReadOnlyList<AssignedCategory> categories)
    {
        var self = categories.Where(c => c.Status == EntryStatus.Self).ToList();
        return self.Count == 0 ? null
            : $"{name}: {string.Join(", ", self.Select(c => c.Category == "EUH" ? c.Statement : c.Category))} {self[0].Provenance.Source}; {self[0].Provenance.Locator}";
    }

    public bool Equals(ProfileIndex? other) => true;

    public override bool Equals(object? obj) => true;

    public override int GetHashCode() => 0;
}
