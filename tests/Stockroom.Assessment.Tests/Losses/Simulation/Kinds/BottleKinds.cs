namespace Stockroom.Assessment.Tests.Losses.Simulation.Kinds;

/// <summary>The kinds of simulated bottle, taken in turn.</summary>
internal static class BottleKinds
{
    private static readonly Func<Chance, int, SimulatedBottle>[] Makers =
    [
        GapBottle.OfLiquid,
        (chance, seed) => new BreathingBottle(chance, seed),
        (chance, seed) => new PlasticBottle(chance, seed),
        CoveredBottle.Water,
        (chance, seed) => new SolutionBottle(chance, seed),
        GapBottle.OfSolid,
        CoveredBottle.Acid,
    ];

    /// <summary>The kind of which a flat mass is no proof, as the bottle calls itself.</summary>
    public const string Drinks = "under acid that drinks";

    public static SimulatedBottle Of(Chance chance, int seed) => Makers[seed % Makers.Length](chance, seed);
}
