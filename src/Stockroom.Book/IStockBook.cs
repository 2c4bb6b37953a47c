using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;

namespace Stockroom.Book;

/// <summary>A stock book as the rest of the program sees it; storage implements it.</summary>
public interface IStockBook
{
    /// <summary>Everything booked so far.</summary>
    Ledger Ledger { get; }

    /// <summary>What it adds up to.</summary>
    BookState State => Ledger.State;

    /// <summary>Books a transaction whole. When it returns, the entries are durable and have their numbers.</summary>
    /// <exception cref="BookRefusal">It cannot be booked; nothing has changed.</exception>
    IReadOnlyList<Entry> Append(Transaction transaction);

    /// <summary>The entries that fit, in the order of their numbers.</summary>
    IEnumerable<Entry> Entries(EntryFilter? filter = null) => Ledger.Entries.Where((filter ?? EntryFilter.All).Fits);
}
