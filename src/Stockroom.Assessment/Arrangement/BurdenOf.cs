using Stockroom.Assessment.Holdings;
using Stockroom.Chemistry.Properties;

namespace Stockroom.Assessment.Arrangement;

/// <summary>What a container weighs and how much liquid it holds, as far as the book says; rounded up.</summary>
internal static class BurdenOf
{
    private const string FlammableLiquid = "flammable-liquid";

    public static Burden Holding(Holding holding, WareCatalogue wares)
    {
        var litres = Millilitres(holding, wares);
        var burns = holding.Profile.Carries(FlammableLiquid);
        return new Burden(Grams(holding), litres, burns ? litres : 0);
    }

    // On the balance, or what the vessel and the content weigh; the content alone is less than what stands there.
    private static long? Grams(Holding holding)
    {
        var container = holding.Container;
        var grams = container.LastGrossGrams ?? (container.TareGrams + container.NetGrams);
        return grams is { } known ? (long)decimal.Ceiling(known) : null;
    }

    // A vessel of which nobody knows how full it is counts as full.
    private static long? Millilitres(Holding holding, WareCatalogue wares)
    {
        if (!holding.Profile.IsLiquid)
            return 0;
        if (holding.Container.NetGrams is { } net && GramsPerMillilitre(holding) is { } density)
            return (long)decimal.Ceiling(net / density);
        return holding.Container.Vessel is { } name && wares.FindVessel(name) is { } vessel ? (long)Math.Ceiling(vessel.Volume.Millilitres) : null;
    }

    private static decimal? GramsPerMillilitre(Holding holding) =>
        holding.Container.Density?.GramsPerMillilitre ?? (holding.Content.Density is { } density ? (decimal)density.GramsPerMillilitre : null);
}
