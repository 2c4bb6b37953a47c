using Stockroom.Assessment.Holdings;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>All place rules. A new one is a file beside this one and a line here.</summary>
public static class PlaceRuleList
{
    public static IReadOnlyList<IPlaceRule> All { get; } =
    [
        new KeepersLimits(),
        new FlammableVolume(),
        new OrdinaryRefrigerator(),
        new NearHeat(),
        new WarmerThanItBears(),
        new CorrosiveAboveEyeLevel(),
        new MissingTray(),
        new OpenInShowcase(),
        new PoisonUnlocked(),
        new RadioactiveUnlocked(),
        new CylinderInFireCabinet(),
        new LightOnSensitive(),
        new LeadInWood(),
    ];

    /// <summary>All findings, the worst first.</summary>
    public static IReadOnlyList<PlaceFinding> Find(StockAssessment stock) =>
        [.. All.SelectMany(r => r.Find(stock))
            .OrderByDescending(f => f.Severity)
            .ThenBy(f => f.Would.Min(Consequences.Rank))
            .ThenByDescending(f => f.Containers.Count)
            .ThenBy(f => f.Cause, StringComparer.Ordinal)];
}
