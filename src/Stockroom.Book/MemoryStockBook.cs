using Stockroom.Book.Encoding;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;

namespace Stockroom.Book;

/// <summary>A stock book that is kept nowhere: for what-ifs, and as the measure for those that are.</summary>
public sealed class MemoryStockBook(TimeProvider clock) : IStockBook
{
    private static readonly string Genesis = EntryCodec.HashOf("in memory");

    public Ledger Ledger { get; private set; } = Ledger.Empty(Genesis);

    public IReadOnlyList<Entry> Append(Transaction transaction)
    {
        var booking = Ledger.Append(transaction, clock.GetLocalNow());
        Ledger = booking.After;
        return booking.Entries;
    }
}
