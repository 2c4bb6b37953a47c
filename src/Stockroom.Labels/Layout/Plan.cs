namespace Stockroom.Labels.Layout;

/// <summary>How a label's pictograms are grouped.</summary>
internal enum Cluster
{
    /// <summary>Side by side, points almost touching.</summary>
    Row,

    /// <summary>Two rows, the lower one set into the gaps of the upper.</summary>
    Quilt,

    /// <summary>One above the other.</summary>
    Stack,

    /// <summary>Two columns, each set into the gaps of the other.</summary>
    Plait,
}

/// <summary>Where the words stand relative to the pictograms.</summary>
internal enum Arrangement
{
    /// <summary>All statements beside the pictograms, in one column.</summary>
    Beside,

    /// <summary>Signal word and hazard statements beside, precautionary statements underneath over the full width.</summary>
    Split,

    /// <summary>All underneath.</summary>
    Below,
}

/// <summary>Which statements follow each other on a line rather than each beginning its own.</summary>
internal enum RunIn
{
    None,
    Precautions,
    All,
}

/// <summary>How much of a label's content is set; the rest is left off.</summary>
/// <param name="Pictograms">How many of the worst.</param>
/// <param name="Hazards">How many from the first.</param>
/// <param name="Precautions">How many from the first.</param>
/// <param name="Details">How many from the first.</param>
/// <param name="Footnotes">How many from the first.</param>
/// <param name="Note">Whether formula or composition stands under the name.</param>
/// <param name="NameLength">Characters of the name.</param>
/// <param name="Extra">How many of the house's warnings.</param>
/// <param name="Signal">Whether the signal word stands there.</param>
internal readonly record struct Portion(
    int Pictograms, int Hazards, int Precautions, int Details, int Footnotes, bool Note, int NameLength, int Extra, bool Signal)
{
    public static Portion All(LabelContent content) => new(
        content.Pictograms.Count, content.Hazards.Count, content.Precautions.Count,
        content.Details.Count, content.Footnotes.Count, Note: true, content.TitleText.Length, content.Extra.Count, Signal: true);
}

/// <summary>One way to set a label: the sizes and the arrangement to be tried.</summary>
internal sealed record Plan
{
    public required double PictogramSideMm { get; init; }

    public required double StatementMm { get; init; }

    public required double DetailMm { get; init; }

    public required double CodeEdgeMm { get; init; }

    public required Cluster Cluster { get; init; }

    public required Arrangement Arrangement { get; init; }

    public required RunIn RunIn { get; init; }

    public required Portion Portion { get; init; }
}
