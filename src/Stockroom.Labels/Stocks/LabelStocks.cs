using Stockroom.Labels.Files;

namespace Stockroom.Labels.Stocks;

/// <summary>The stocks that can be named: those of the program, and on top those of the keeper's own folder.</summary>
public sealed class LabelStocks
{
    private readonly SortedDictionary<string, LabelStock> _stocks = new(StringComparer.Ordinal);

    private LabelStocks()
    {
    }

    public IReadOnlyCollection<LabelStock> All => _stocks.Values;

    /// <summary>Reads all stocks; one bad file refuses the lot, so that none goes missing unnoticed.</summary>
    /// <param name="folder">The keeper's own stock files, or null; a stock of the same name replaces the program's.</param>
    /// <exception cref="LabelException">A file is not a stock, or the folder cannot be read.</exception>
    public static LabelStocks Load(string? folder = null)
    {
        var stocks = new LabelStocks();
        foreach (var (text, file) in LabelFiles.Of("Stocks", folder))
        {
            var stock = LabelStockReader.Read(text, file);
            stocks._stocks[stock.Name] = stock;
        }

        return stocks;
    }

    /// <summary>The stock of that name.</summary>
    /// <exception cref="LabelException">No such stock; the message names those there are.</exception>
    public LabelStock Named(string name) => _stocks.TryGetValue(name, out var stock)
        ? stock
        : throw new LabelException($"there is no label stock '{name}'; the stocks are {string.Join(", ", _stocks.Keys)}");
}
