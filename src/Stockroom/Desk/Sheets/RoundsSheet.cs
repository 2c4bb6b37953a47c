using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Rounds;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Sheets;
using Stockroom.Verbs;

namespace Stockroom.Desk.Sheets;

/// <summary>A check-list to carry: what is due, place by place in the order of the walk, with a box and room for what was found.</summary>
internal static class RoundsSheet
{
    public static Sheet Of(StockAssessment stock, string bookName)
    {
        var blocks = new List<SheetBlock>
        {
            new WordsBlock($"Rounds: {bookName}", 8.5, Face.Bold, IsHeading: true),
            new WordsBlock($"{stock.Due.Count} due on {stock.Today.Iso()}, oldest first in each place. By: ______________________   Date: ______________", 3.6, SpaceAboveMm: 1),
        };
        var hands = stock.Holdings.Where(h => h.Container.HandsOff is not null).ToList();
        if (hands.Count > 0)
            blocks.Add(new PlateBlock($"Hands off, do not touch on the way: {string.Join(", ", hands.Select(h => $"{h.Content.Name} ({h.Id}, {h.PlaceName})"))}", 3.8));
        if (stock.Due.Count == 0)
            blocks.Add(new WordsBlock("Nothing is due. Look around all the same: stains, smells, cracked caps, lifted labels.", 4, SpaceAboveMm: 4));
        var rows = new List<IReadOnlyList<SheetCell>>();
        foreach (var place in stock.Due.GroupBy(d => stock.Of(d.Container).PlaceWords).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            rows.Add([place.Key]);
            rows.AddRange(place.OrderBy(d => d.Since).Select(d => Row(d, stock)));
        }

        if (rows.Count > 0)
            blocks.Add(new TableBlock([("", 6), ("What to do", 40), ("Container", 40), ("Since", 20), ("Because", 70), ("Found", 34)], rows, 3.2));

        return new Sheet($"Rounds of {bookName}", stock.Today.Iso(), blocks);
    }

    private static IReadOnlyList<SheetCell> Row(DueItem due, StockAssessment stock) =>
    [
        new BoxCell(),
        new WordsCell(char.ToUpperInvariant(due.What[0]) + due.What[1..], Face.Bold),
        $"{stock.Of(due.Container).Content.Name}, {due.Container}",
        due.Since.Iso(),
        due.Because,
        "",
    ];
}
