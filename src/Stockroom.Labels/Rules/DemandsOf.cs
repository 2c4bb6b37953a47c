using Stockroom.Chemistry.Hazards;
using Stockroom.Labels.Layout;

namespace Stockroom.Labels.Rules;

/// <summary>What an edition asks of the sizes and looks of a label.</summary>
public static class DemandsOf
{
    /// <summary>Where a capacity is not known, the letters are as for the next larger usual package, so that they are never too small.</summary>
    private const decimal UnknownMillilitres = 3000;

    /// <summary>
    /// CLP has sizes by capacity; the formatting rules of 2024 add letter heights, black on white and line spacing, which the layout keeps
    /// anyway. The GHS of the United Nations and the US standard ask for what is legible.
    /// </summary>
    /// <param name="rules">Edition.</param>
    /// <param name="packageMillilitres">Capacity of the package; null where it is not known.</param>
    /// <param name="formatting2024">Keep the formatting rules of Regulation (EU) 2024/2865; with <see cref="RuleSet.Eu"/> only.</param>
    /// <param name="frame">Of the pictograms.</param>
    public static LabelDemands For(RuleSet rules, decimal? packageMillilitres, bool formatting2024 = false, FrameStyle frame = FrameStyle.Red)
    {
        if (rules != RuleSet.Eu)
        {
            return new LabelDemands
            {
                PictogramSideMm = Legibility.SmallestPictogramSideMm,
                XHeightSource = null,
                Frame = frame,
                SpareFramesMayBeBlackened = rules == RuleSet.Us,
                Source = rules == RuleSet.Us ? "29 CFR 1910.1200(f)(11) and Appendix C: legible" : "GHS 1.4.10: legible",
            };
        }

        var row = LabelSizes.For(packageMillilitres ?? UnknownMillilitres);
        return new LabelDemands
        {
            PictogramSideMm = (double)row.PictogramMillimetres,
            UsualPictogramSideMm = (double)row.PictogramIfPossibleMillimetres,
            XHeightMm = formatting2024 ? (double)row.XHeightMillimetres : 0,
            UsualXHeightMm = packageMillilitres is null && !formatting2024 ? LabelDemands.Usual.UsualXHeightMm : (double)row.XHeightMillimetres,
            LabelMm = packageMillilitres is null ? null : ((double)row.ShorterMillimetres, (double)row.LongerMillimetres),
            LabelMmIfPossible = row.LabelIfPossible,
            BlackOnWhite = formatting2024,
            Frame = frame,
            Source = "CLP Annex I 1.2.1.4",
        };
    }
}
