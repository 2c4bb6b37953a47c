using System.Globalization;
using Stockroom.Labels.Rules;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>Whether a stock's labels are as large as the edition asks for the package.</summary>
internal static class LabelSize
{
    /// <summary>What is short; required where the edition knows no exception. Null where the label is large enough.</summary>
    public static LeftOff? Shortfall(LabelDemands demands, LabelStock stock)
    {
        if (demands.LabelMm is not var (shorter, longer))
        {
            return null;
        }

        var (own, other) = (Math.Min(stock.LabelWidthMm, stock.LabelHeightMm), Math.Max(stock.LabelWidthMm, stock.LabelHeightMm));
        if (own >= shorter - 0.5 && other >= longer - 0.5)
        {
            return null;
        }

        var says = string.Create(CultureInfo.InvariantCulture, $"the package asks for a label of {shorter:0.#} x {longer:0.#} mm{(demands.LabelMmIfPossible ? " if possible" : "")} ({demands.Source}); this one is {own:0.#} x {other:0.#} mm");
        return new LeftOff(says, Required: !demands.LabelMmIfPossible);
    }
}
