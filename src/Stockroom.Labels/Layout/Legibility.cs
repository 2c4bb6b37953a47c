using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Layout;

/// <summary>The smallest that can be read.</summary>
internal static class Legibility
{
    /// <summary>x-height under which print is no longer counted as legible (Regulation (EU) No 1169/2011 Art. 13(3), small packages).</summary>
    public const double SmallestXHeightMm = 0.9;

    /// <summary>Under this side a symbol can no longer be told on an ordinary printer (our own judgement, from looking at prints).</summary>
    public const double SmallestPictogramSideMm = 5;

    /// <summary>Where an edition names no side, pictograms get smaller than this only where the label has no room (side of 1 cm2, as CLP Annex I 1.2.1.3 has it).</summary>
    public const double UsualLeastPictogramSideMm = 10;

    /// <summary>Type size with that x-height.</summary>
    public static double SmallestTypeMm { get; } = SmallestXHeightMm / LabelFont.Of(Face.Regular).XHeightEm;
}
