using Stockroom.Storage;

namespace Stockroom.Verbs;

/// <summary>The books a verb had to do with, for what is done when its work is done.</summary>
internal sealed class BooksSeen
{
    private readonly List<StockBook> _all = [];

    /// <summary>Folders of the books that were opened to write, or shown on the screens.</summary>
    public List<string> InUse { get; } = [];

    /// <summary>True if one of them does not hold, so that what was shown is not all there is.</summary>
    public bool IsDamaged => _all.Exists(b => b.Damage.Count > 0);

    public StockBook Add(StockBook book)
    {
        _all.Add(book);
        return book;
    }

    /// <summary>Tells what the books have to say and was not told yet.</summary>
    public void Tell(TextWriter to)
    {
        foreach (var news in _all.SelectMany(b => b.TakeNews()))
            to.WriteLine("stockroom: " + news);
    }
}
