namespace Stockroom.Assessment.Concerns;

/// <summary>All concerns. A new one is a file beside this one and a line here.</summary>
public static class ConcernList
{
    public static IReadOnlyList<IConcern> All { get; } =
    [
        new HandsOffConcern(),
        new AmpouleConcern(),
        new NeighbourConcern(),
        new PlaceConcern(),
        new SealConcern(),
        new MaterialConcern(),
        new AirConcern(),
        new OrphanConcern(),
    ];
}
