using Stockroom.Book;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Recipes;

/// <summary>One part whose share may lie anywhere between two bounds, in per cent by mass of the pure substance.</summary>
internal sealed record OpenShare(Substance Substance, decimal Low, decimal? High, string Text);

/// <summary>
/// Settles open shares in the worst light: every part but water is as much as it can be, water takes what is left.
/// </summary>
internal static class OpenShares
{
    private const string Water = "water";

    public static List<Part> Settle(string name, IReadOnlyList<OpenShare> shares, List<string> notes)
    {
        var least = shares.Sum(s => s.Low);
        if (least > 100m)
            throw new BookRefusal($"the parts of {name} add up to {least:0.####} % by mass, more than 100 %");
        var settled = shares.Select(s => (Share: s, Percent: Most(s, least))).ToList();
        var solutes = settled.Where(s => s.Share.Substance.Name != Water).Sum(s => s.Percent);
        var water = settled.Where(s => s.Share.Substance.Name == Water).ToList();
        if (solutes + water.Sum(s => s.Share.Low) > 100m)
            throw new BookRefusal($"the open parts of {name} could all be as large as {solutes:0.####} % together; give one of them as a figure");
        var left = 100m - solutes;
        settled = [.. settled.Select(s => s.Share.Substance.Name == Water && water.Count == 1 ? (s.Share, Math.Min(s.Percent, left)) : s)];
        foreach (var (share, percent) in settled.Where(s => s.Share.High != s.Share.Low))
            notes.Add(Said(share, percent));
        return [.. settled.Where(s => s.Percent > 0).Select(s => new Part(s.Share.Substance, s.Percent))];
    }

    private static decimal Most(OpenShare share, decimal least)
    {
        var leftByOthers = 100m - (least - share.Low);
        return Math.Min(share.High ?? leftByOthers, leftByOthers);
    }

    private static string Said(OpenShare share, decimal percent) => share switch
    {
        { Low: 0, High: null } => $"{share.Substance.Name} takes the rest, {percent:0.####} %",
        { Substance.Name: Water } => $"{share.Substance.Name} {share.Text} is taken as the {percent:0.####} % that the other parts leave",
        { High: null } => $"{share.Substance.Name} {share.Text} is taken as {percent:0.####} %, the most that the other parts leave: the worst case",
        _ => $"{share.Substance.Name} {share.Text} is taken as {percent:0.####} %, the worst case",
    };
}
