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
internal readonly record struct Portion
{
    /// <summary>How many of the worst.</summary>
    public required int Pictograms { get; init; }

    /// <summary>They may be smaller than the law asks: marks that warn at a workplace.</summary>
    public required bool Marks { get; init; }

    /// <summary>How many from the first.</summary>
    public required int Hazards { get; init; }

    public required int Precautions { get; init; }

    /// <summary>How many particulars, the most important first.</summary>
    public required int Details { get; init; }

    public required int Footnotes { get; init; }

    /// <summary>Whether formula or composition stands under the name.</summary>
    public required bool Note { get; init; }

    /// <summary>Characters of the name.</summary>
    public required int NameLength { get; init; }

    /// <summary>How many of the warnings beside those of the GHS.</summary>
    public required int Extra { get; init; }

    public required bool Signal { get; init; }

    public required bool Code { get; init; }
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
