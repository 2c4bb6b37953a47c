using System.Globalization;
using Stockroom.Assessment.Holdings;
using Stockroom.Book.Places;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Sheets;
using Stockroom.Verbs;

namespace Stockroom.Desk.Sheets;

/// <summary>For whoever opens the door in an emergency: the worst first, what not to use, whom to call, and all that is inside.</summary>
internal static class DoorSheet
{
    private const string NobodyToCall = "________________________________";

    public static Sheet Of(Place place, StockAssessment stock, string? call)
    {
        var inside = stock.State.ContainersIn(place.Id, deep: true).Select(c => stock.Of(c.Id)).ToList();
        var path = string.Join(" > ", stock.State.PathTo(place.Id).Select(p => p.Name));
        var danger = inside.Count(h => h.Label.SignalWord == "Danger");
        var blocks = new List<SheetBlock>
        {
            new WordsBlock($"In an emergency: {place.Name}", 8.5, Face.Bold, IsHeading: true),
            new WordsBlock($"{path} · {Count(inside.Count, "container")}, {danger} of them marked Danger · as of {stock.Today.Iso()}", 3.4, SpaceAboveMm: 0.5),
            new PlateBlock($"Call the local emergency number, then: {call ?? NobodyToCall}", 5.4),
        };
        if (inside.Count == 0)
        {
            blocks.Add(new WordsBlock("By the book nothing stands here. The book may be behind: look before you act.", 4, SpaceAboveMm: 3));
            return new Sheet($"Door sheet: {path}", Foot(stock), blocks);
        }

        var pictograms = inside.SelectMany(h => h.Label.Pictograms).GroupBy(p => p, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => (g.Key, Count(g.Count(), "container"))).ToList();
        if (pictograms.Count > 0)
            blocks.Add(new PictogramBlock(pictograms, 13));
        Warnings(blocks, inside);
        Forbidden(blocks, NotToUse.On(inside, stock.Facts));
        blocks.Add(new WordsBlock("What is inside, the worst first", 4.6, Face.Bold, SpaceAboveMm: 2.5, IsHeading: true));
        blocks.Add(Contents(inside, place, stock));
        return new Sheet($"Door sheet: {path}", Foot(stock), blocks);
    }

    private static void Warnings(List<SheetBlock> blocks, List<Holding> inside)
    {
        var lines = new List<(string What, IEnumerable<Holding> Which)>
        {
            ("CONTENTS UNKNOWN: treat as the worst they could be", inside.Where(h => h.Content.IsUnknown)),
            ("HANDS OFF: do not move, open or touch; keep away, get help", inside.Where(h => h.Container.HandsOff is not null)),
            ("RADIOACTIVE: do not touch or breathe what is spilt", inside.Where(h => h.Label.WordsBeside.Any(w => w.Contains("adioactive", StringComparison.Ordinal)))),
        };
        foreach (var (what, which) in lines)
        {
            var list = which.ToList();
            if (list.Count > 0)
                blocks.Add(new WordsBlock($"{what}: {string.Join(", ", list.Select(h => $"{h.Content.Name} ({h.Id}, {h.PlaceName})"))}.", 3.6, Face.Bold, SpaceAboveMm: 1.2));
        }
    }

    private static void Forbidden(List<SheetBlock> blocks, IReadOnlyList<Forbidden> list)
    {
        blocks.Add(new WordsBlock("Do not use", 4.6, Face.Bold, SpaceAboveMm: 2, IsHeading: true));
        if (list.Count == 0)
        {
            blocks.Add(new WordsBlock("The contact rules name nothing here that water, foam, carbon dioxide or acid would set off. They do not know everything.", 3.2));
            return;
        }

        blocks.Add(new TableBlock(
            [("Not", 15), ("on", 38), ("because", 47), ("source", 30)],
            [.. list.Select(f => (IReadOnlyList<SheetCell>)[new WordsCell(f.Agent, Face.Bold), new WordsCell(string.Join(", ", f.Contents), Face.Bold), f.Because, f.Source])],
            3.1));
    }

    private static TableBlock Contents(List<Holding> inside, Place place, StockAssessment stock)
    {
        var rows = inside
            .GroupBy(h => h.Content.Name, StringComparer.Ordinal)
            .Select(g => (Holdings: g.ToList(), Rank: g.Min(h => HazardRank.Of(h.Label, h.Content.IsUnknown))))
            .OrderBy(r => r.Rank).ThenBy(r => r.Holdings[0].Content.Name, StringComparer.Ordinal)
            .Select(r => Row(r.Holdings, place, stock));
        return new TableBlock([("", 24), ("What", 36), ("How much", 20), ("Worst hazards", 56), ("Where, id", 34)], [.. rows], 3);
    }

    private static IReadOnlyList<SheetCell> Row(List<Holding> holdings, Place place, StockAssessment stock)
    {
        var first = holdings[0];
        var worst = first.Content.IsUnknown ? ["Hazards not known"] : HazardRank.Of(first.Label).Take(3).Select(s => s.Text.TrimEnd('.')).ToList();
        var signal = first.Label.SignalWord is { } word ? $"{word}. " : "";
        return
        [
            new PictogramsCell(first.Label.Pictograms),
            new WordsCell(first.Content.IsUnknown ? $"Contents unknown: {first.Content.Name}" : first.Content.Name, Face.Bold),
            Amount(holdings),
            worst.Count == 0 ? "No GHS hazard known" : $"{signal}{string.Join(". ", worst)}.",
            string.Join("; ", holdings.GroupBy(h => Within(h, place, stock)).Select(g => $"{g.Key}: {string.Join(", ", g.Select(h => h.Id))}")),
        ];
    }

    private static string Amount(List<Holding> holdings)
    {
        var known = holdings.Where(h => h.Container.NetGrams is not null).ToList();
        var sum = known.Count == 0 ? "unknown" : Words.Grams(known.Sum(h => h.Container.NetGrams!.Value));
        return known.Count < holdings.Count && known.Count > 0 ? $"{sum} and more" : sum;
    }

    /// <summary>Where inside the place it stands; the place's own name where it stands in it directly.</summary>
    private static string Within(Holding holding, Place place, StockAssessment stock)
    {
        var path = stock.State.PathTo(holding.Container.PlaceId);
        var inner = path.SkipWhile(p => p.Id != place.Id).Skip(1).Select(p => p.Name).ToList();
        return inner.Count == 0 ? place.Name : string.Join(" > ", inner);
    }

    private static string Count(int count, string what) => string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");

    private static string Foot(StockAssessment stock) =>
        $"{stock.Today.Iso()} · from the stock book; hazards: Regulation (EC) No 1272/2008. Arithmetic and published rules, not permission";
}
