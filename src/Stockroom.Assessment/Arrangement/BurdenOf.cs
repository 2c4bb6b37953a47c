using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Neighbours.Standing;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Arrangement;

/// <summary>What a container weighs and how much liquid it holds, as far as the book says.</summary>
internal static class BurdenOf
{
    private const decimal Millionths = 1_000_000m;

    public static Burden Holding(Holding holding, StockAssessment stock)
    {
        var kilograms = HeldAmounts.Kilograms(holding);
        long? microlitres = holding.Content.State != MatterState.Liquid ? 0 : HeldAmounts.Litres(holding, stock) is { } litres ? (long)decimal.Round(litres * Millionths) : null;
        return new Burden(
            kilograms > 0 ? (long)decimal.Round(kilograms * Millionths) : null, microlitres, HeldAmounts.IsFlammableLiquid(holding) ? microlitres : 0);
    }
}
