using System.Collections.Immutable;
using Stockroom.Book.Encoding;
using Stockroom.Book.Entries;

namespace Stockroom.Book.Ledgers;

/// <summary>
/// The append-only list of entries, each carrying the hash of the one before, and the state they add up to. Immutable.
/// </summary>
public sealed class Ledger
{
    private Ledger(ImmutableList<Entry> entries, string headHash, BookState state, IReadOnlyDictionary<long, string> problems)
    {
        Entries = entries;
        HeadHash = headHash;
        State = state;
        Problems = problems;
    }

    public ImmutableList<Entry> Entries { get; }

    /// <summary>SHA-256 of the last entry; of the book's own identity while there is none.</summary>
    public string HeadHash { get; }

    public BookState State { get; }

    /// <summary>Entries that have no effect because they cannot be, with the reason; empty in a book that was only ever appended to.</summary>
    public IReadOnlyDictionary<long, string> Problems { get; }

    public long LastTransaction => Entries.IsEmpty ? 0 : Entries[^1].Transaction;

    /// <summary>A ledger without entries that begins at a hash of its own, so that no other book's entries fit it.</summary>
    public static Ledger Empty(string genesisHash) => new([], genesisHash, BookState.Empty, ImmutableSortedDictionary<long, string>.Empty);

    /// <summary>A ledger read back from where it was kept; the chain must have been checked there.</summary>
    public static Ledger Of(string genesisHash, IEnumerable<Entry> entries)
    {
        var list = entries.ToImmutableList();
        var fold = LedgerFold.Of(list);
        return new Ledger(list, list.IsEmpty ? genesisHash : EntryCodec.HashOf(list[^1]), fold.State, fold.Problems);
    }

    /// <summary>Books a transaction: numbers and chains its entries, and refuses it whole if any of them cannot be.</summary>
    /// <exception cref="BookRefusal">In one line, why not.</exception>
    public Booking Append(Transaction transaction, DateTimeOffset recordedAt)
    {
        if (transaction.Entries.Count == 0)
            throw new BookRefusal("there is nothing to book");
        var booked = new List<Entry>(transaction.Entries.Count);
        var texts = new List<string>(transaction.Entries.Count);
        var (state, hash, anew) = (State, HeadHash, false);
        foreach (var draft in transaction.Entries)
        {
            var entry = Stamp(draft, Entries.Count + booked.Count + 1, transaction.By, recordedAt, hash);
            Rules.CheckSignedAndDated(entry, state);
            state = state.Reserving(entry);
            anew = anew || ComesLate(entry, state);
            if (!anew)
            {
                Rules.Check(entry, state);
                state = entry.Apply(state);
            }

            var text = EntryCodec.EncodeNew(entry);
            hash = EntryCodec.HashOf(text);
            booked.Add(entry);
            texts.Add(text);
        }

        var entries = Entries.AddRange(booked);
        var after = anew ? Refolded(entries, hash, booked) : new Ledger(entries, hash, state, Problems);
        return new Booking(LastTransaction + 1, booked, texts, after);
    }

    /// <summary>The transaction that takes back the last one still counting, or a given one.</summary>
    /// <exception cref="BookRefusal">There is nothing to undo.</exception>
    public Transaction Undo(string by, string reason, DateTimeOffset happenedAt, long? transaction = null)
    {
        if (transaction is null)
        {
            var undone = Entries.OfType<Undone>().Select(u => u.Undoes).ToHashSet();
            transaction = Entries.Reverse().FirstOrDefault(e => e is not Undone && !undone.Contains(e.Transaction))?.Transaction
                ?? throw new BookRefusal("there is nothing to undo");
        }

        return new Transaction(by, new Undone { HappenedAt = happenedAt, Undoes = transaction.Value, Reason = reason });
    }

    /// <summary>
    /// The book on another day: as it was (what had happened by then) and as it was known (what had been booked by then).
    /// Places set up later are there from the start.
    /// </summary>
    public BookState StateOn(DateOnly? happenedBy = null, DateOnly? recordedBy = null)
    {
        if (happenedBy is null && recordedBy is null)
            return State;
        var filter = new EntryFilter { RecordedBy = recordedBy };
        return LedgerFold.Of([.. Entries.Where(filter.Fits)], happenedBy).State;
    }

    private Entry Stamp(Entry draft, long number, string by, DateTimeOffset recordedAt, string previous)
    {
        var entry = draft with { Number = number, Transaction = LastTransaction + 1, By = by, RecordedAt = recordedAt, Previous = previous };
        if (entry is Corrected correction && correction.Entry > 0 && correction.Entry <= Entries.Count)
        {
            var target = Entries[(int)correction.Entry - 1];
            entry = correction with { Container = target.Container, Place = target.Place };
        }

        return entry;
    }

    // True if the entry takes effect before something that is already there.
    internal static bool ComesLate(Entry entry, BookState state) =>
        entry is Corrected or Undone
        || entry.Containers.Any(id => state.Containers.GetValueOrDefault(id) is { } c && entry.HappenedOn < c.LastDay)
        || (entry is not PlaceMade && entry.Place is { } place && state.Places.GetValueOrDefault(place) is { } p && entry.HappenedOn < p.LastDay);

    private Ledger Refolded(ImmutableList<Entry> entries, string hash, List<Entry> booked)
    {
        var fold = LedgerFold.Of(entries);
        foreach (var correction in booked.OfType<Corrected>())
        {
            if (fold.Problems.TryGetValue(correction.Entry, out var problem) && !Problems.ContainsKey(correction.Entry))
                throw new BookRefusal($"entry {correction.Entry} cannot be corrected so: {problem}");
        }

        foreach (var (number, problem) in fold.Problems)
        {
            if (!Problems.ContainsKey(number) && number > Entries.Count)
                throw new BookRefusal(problem);
        }

        foreach (var (number, problem) in fold.Problems)
        {
            if (Problems.ContainsKey(number))
                continue;
            var resting = entries[(int)number - 1];
            var named = $"entry {number} ({resting.Kind}, {resting.HappenedOn:yyyy-MM-dd})";
            throw new BookRefusal(booked[0] is Undone undone
                ? $"transaction {undone.Undoes} cannot be undone: {named} rests on it: {problem}"
                : $"that cannot be booked: {named} would no longer hold: {problem}");
        }

        return new Ledger(entries, hash, fold.State, fold.Problems);
    }
}
