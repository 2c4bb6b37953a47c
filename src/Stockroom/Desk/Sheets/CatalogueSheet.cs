using Stockroom.Assessment.Holdings;
using Stockroom.Book.Containers;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Sheets;
using Stockroom.Verbs;

namespace Stockroom.Desk.Sheets;

/// <summary>The collection as a booklet: element by element, then everything else by name.</summary>
internal static class CatalogueSheet
{
    private const double RowMm = 2.9;

    private static readonly (string, double)[] Columns =
        [("Id", 13), ("Form", 40), ("Mass", 18), ("Origin", 50), ("Cover", 22), ("Sealed", 19), ("Place", 40)];

    public static Sheet Of(StockAssessment stock, string bookName)
    {
        var pure = stock.Holdings.Where(h => h.Content.Pure?.Element is not null).ToLookup(h => h.Content.Pure!.Element!, StringComparer.Ordinal);
        var elements = Elements().Where(e => pure.Contains(e.Symbol)).ToList();
        var others = stock.Holdings.Where(h => h.Content.Pure?.Element is null).OrderBy(h => h.Content.Name, StringComparer.OrdinalIgnoreCase).ThenBy(h => h.Id).ToList();
        var blocks = new List<SheetBlock>
        {
            new WordsBlock($"The collection of {bookName}", 9, Face.Bold, IsHeading: true),
            new WordsBlock($"{elements.Count} of {Elements().Count} elements in {pure.Sum(g => g.Count())} specimens; {others.Count} other things. As of {stock.Today.Iso()}.", 3.6, SpaceAboveMm: 0.5),
        };
        var rows = new List<IReadOnlyList<SheetCell>>();
        foreach (var (symbol, number, name) in elements)
        {
            rows.Add([$"{number} · {symbol} · {char.ToUpperInvariant(name[0])}{name[1..]}"]);
            rows.AddRange(pure[symbol].OrderBy(h => h.Id).Select(h => Row(h, h.Content.Name == name ? Form(h) : $"{h.Content.Name}, {Form(h)}")));
        }

        if (rows.Count > 0)
            blocks.Add(new TableBlock(Columns, rows, RowMm));

        if (others.Count > 0)
        {
            blocks.Add(new WordsBlock("Compounds, reagents and other things", 6, Face.Bold, SpaceAboveMm: 5, IsHeading: true));
            blocks.Add(new TableBlock([Columns[0], ("What and form", 48), .. Columns[2..]], [.. others.Select(h => Row(h, $"{h.Content.Name}, {Form(h)}"))], RowMm));
        }

        return new Sheet($"Catalogue of {bookName}", stock.Today.Iso(), blocks);
    }

    private static IReadOnlyList<SheetCell> Row(Holding holding, string form) =>
    [
        new WordsCell(holding.Id.ToString(), Face.Bold),
        form,
        Words.Grams(holding.Container.NetGrams),
        Origin(holding.Container.Lot, holding.Container.ReceivedOn),
        holding.Container.Cover?.Name ?? "none",
        holding.Container.SealedOn?.Iso() ?? (holding.IsFlameSealed ? "day not booked" : "no"),
        holding.PlaceName,
    ];

    private static string Form(Holding holding)
    {
        var state = holding.Content.State == MatterState.Unknown ? "state unknown" : holding.Content.State.ToString().ToLowerInvariant();
        return holding.Container.Vessel is { } vessel ? $"{state} in {vessel}" : state;
    }

    private static string Origin(Lot lot, DateOnly received)
    {
        var from = string.Join(", ", new[] { lot.Origin, lot.Supplier, lot.Batch is { } batch ? $"lot {batch}" : null }.OfType<string>());
        return $"{Lot.WordOf(lot.How)} {received.Iso()}{(from.Length > 0 ? $": {from}" : "")}";
    }

    private static IReadOnlyList<(string Symbol, int Number, string Name)> Elements() =>
        [.. EmbeddedTables.Facts("atomic-weights.tsv", "symbol", "atomic_number", "element", "weight").Rows
            .Select(r => (r.Text("symbol"), r.Integer("atomic_number"), r.Text("element"))).DistinctBy(e => e.Item2).OrderBy(e => e.Item2)];
}
