using Stockroom.Book.Entries;

namespace Stockroom.Book.Ledgers;

/// <summary>What is booked together or not at all: who books it, and entries that have no number yet.</summary>
public sealed record Transaction(string By, IReadOnlyList<Entry> Entries)
{
    public Transaction(string by, params Entry[] entries)
        : this(by, (IReadOnlyList<Entry>)entries)
    {
    }
}

/// <summary>A transaction as accepted: the entries with their numbers, their canonical texts, and the ledger with them in it.</summary>
public sealed record Booking(long Transaction, IReadOnlyList<Entry> Entries, IReadOnlyList<string> Texts, Ledger After);
