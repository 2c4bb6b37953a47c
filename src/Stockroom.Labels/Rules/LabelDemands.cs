namespace Stockroom.Labels.Rules;

/// <summary>How the frames of pictograms are printed.</summary>
public enum FrameStyle
{
    Red,

    /// <summary>On a printer without red.</summary>
    Black,
}

/// <summary>The sizes and looks that the chosen edition asks of one label; lengths in millimetres.</summary>
public sealed record LabelDemands
{
    /// <summary>CLP for a package of up to 3 L, red frames, no formatting rules.</summary>
    public static LabelDemands Usual { get; } = new();

    /// <summary>No pictogram of a label that goes with a supplied package is smaller (CLP Annex I 1.2.1.3 and Table 1.3: 1 cm2).</summary>
    public double PictogramSideMm { get; init; } = 10;

    /// <summary>To be kept where possible (CLP Annex I Table 1.3).</summary>
    public double UsualPictogramSideMm { get; init; } = 16;

    /// <summary>Height of a lower-case x in the statements: not less; 0 where legible is all that is asked.</summary>
    public double XHeightMm { get; init; }

    /// <summary>To be kept where possible.</summary>
    public double UsualXHeightMm { get; init; } = 1.2;

    /// <summary>Which rules ask for that height; null where the edition asks for none and it is only what is set where there is room.</summary>
    public string? XHeightSource { get; init; } = "Regulation (EU) 2024/2865";

    /// <summary>Size that the label itself must have, the shorter side first; null where none is asked.</summary>
    public (double Shorter, double Longer)? LabelMm { get; init; }

    /// <summary>True where a smaller label will do if the package leaves no room for that size.</summary>
    public bool LabelMmIfPossible { get; init; } = true;

    /// <summary>All text black on white: the warnings in outlined plates.</summary>
    public bool BlackOnWhite { get; init; }

    public FrameStyle Frame { get; init; }

    /// <summary>Black frames are allowed, for use inside the place.</summary>
    public bool BlackFramesAllowed { get; init; }

    /// <summary>Frames of a pre-printed stock that are not needed may be filled with solid black.</summary>
    public bool SpareFramesMayBeBlackened { get; init; }

    /// <summary>Which clause asks for it.</summary>
    public string Source { get; init; } = "CLP Annex I 1.2.1.4";
}
