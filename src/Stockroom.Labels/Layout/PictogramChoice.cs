namespace Stockroom.Labels.Layout;

/// <summary>Which pictograms stay where a label cannot hold them all.</summary>
internal static class PictogramChoice
{
    /// <summary>
    /// Worst first. GHS06 and GHS08 before GHS01 and GHS05 follows CLP Annex I 1.5.2.4 (inner packages up to 10 ml); the rest is
    /// common practice: what harms at once and for good before what harms less.
    /// </summary>
    private static readonly string[] WorstFirst =
        ["GHS06", "GHS08", "GHS01", "GHS05", "GHS02", "GHS03", "GHS04", "GHS09", "GHS07"];

    /// <summary>The <paramref name="count"/> worst, in the order in which they were given.</summary>
    public static IReadOnlyList<string> Worst(IReadOnlyList<string> codes, int count)
    {
        var kept = codes.OrderBy(c => Array.IndexOf(WorstFirst, c)).Take(count).ToHashSet(StringComparer.Ordinal);
        return [.. codes.Where(kept.Contains)];
    }
}
