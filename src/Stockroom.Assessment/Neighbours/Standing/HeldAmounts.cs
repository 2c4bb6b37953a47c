using Stockroom.Assessment.Holdings;
using Stockroom.Book.Places;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>How much stands in a place as far as it is booked; what nobody knows counts as nothing, so that a limit said to be passed is passed.</summary>
internal static class HeldAmounts
{
    private static readonly Temperature Room = Temperature.FromCelsius(20);

    /// <summary>Booked volume of a liquid in L; null where amount or density is not known, or it is no liquid.</summary>
    public static decimal? Litres(Holding holding, StockAssessment stock)
    {
        if (holding.Content.State != MatterState.Liquid || holding.Container.NetGrams is not { } grams)
            return null;
        var density = holding.Container.Density?.GramsPerMillilitre
            ?? (decimal?)holding.Content.Density?.GramsPerMillilitre
            ?? (holding.Content.Pure is { } pure && stock.Facts.Properties.Density(pure, Room).Value is { } known ? (decimal)known.GramsPerMillilitre : null);
        return density is > 0 ? grams / density.Value / 1000m : null;
    }

    /// <summary>Known mass in kg: gross where it was weighed, else what is in it.</summary>
    public static decimal Kilograms(Holding holding) => Math.Max(holding.Container.LastGrossGrams ?? 0m, holding.Container.NetGrams ?? 0m) / 1000m;

    /// <summary>Flammable liquids of GHS categories 1 to 3, flash point up to 60 C.</summary>
    public static bool IsFlammableLiquid(Holding holding) => holding.HasCategory("Flam. Liq. 1", "Flam. Liq. 2", "Flam. Liq. 3");

    public static IReadOnlyList<Holding> In(Place place, StockAssessment stock) => [.. stock.Holdings.Where(h => h.Path.Any(p => p.Id == place.Id))];
}
