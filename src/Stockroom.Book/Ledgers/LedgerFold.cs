using Stockroom.Book.Encoding;
using Stockroom.Book.Entries;

namespace Stockroom.Book.Ledgers;

/// <summary>
/// The state a list of entries adds up to: undone transactions left out, corrections put in, in the order of the days on
/// which things happened. An entry that cannot be has no effect and is reported.
/// </summary>
internal sealed class LedgerFold
{
    private readonly SortedDictionary<long, string> _problems = [];
    private readonly Dictionary<long, Entry> _byNumber;
    private readonly HashSet<long> _undone = [];
    private readonly Dictionary<long, List<Corrected>> _corrections = [];

    private LedgerFold(IReadOnlyList<Entry> entries)
    {
        _byNumber = entries.ToDictionary(e => e.Number);
        FindUndone(entries);
        FindCorrections(entries);
    }

    public BookState State { get; private set; } = BookState.Empty;

    /// <summary>Why an entry has no effect, by its number.</summary>
    public IReadOnlyDictionary<long, string> Problems => _problems;

    /// <summary>Adds the entries up.</summary>
    /// <param name="entries">In the order of their numbers.</param>
    /// <param name="until">Only what happened on or before this day; corrections and undoings always count.</param>
    public static LedgerFold Of(IReadOnlyList<Entry> entries, DateOnly? until = null)
    {
        var fold = new LedgerFold(entries);
        fold.Run(entries, until ?? DateOnly.MaxValue);
        return fold;
    }

    private void Run(IReadOnlyList<Entry> entries, DateOnly until)
    {
        var counting = new List<Entry>(entries.Count);
        foreach (var entry in entries)
        {
            State = State.Reserving(entry);
            if (!_undone.Contains(entry.Transaction))
                counting.Add(Amended(entry));
        }

        foreach (var entry in counting.Where(e => e is PlaceMade))
            Step(entry);
        foreach (var entry in counting.Where(e => e is not PlaceMade && e.HappenedOn <= until).OrderBy(e => e.HappenedOn).ThenBy(e => e.Number))
            Step(entry);
    }

    private void Step(Entry entry)
    {
        try
        {
            Rules.Check(entry, State);
            State = entry.Apply(State);
        }
        catch (BookRefusal refusal)
        {
            _problems.TryAdd(entry.Number, refusal.Message);
        }
    }

    private void FindUndone(IReadOnlyList<Entry> entries)
    {
        var undoings = entries.OfType<Undone>().ToList();
        if (undoings.Count == 0)
            return;
        var transactions = entries.Select(e => e.Transaction).ToHashSet();
        var ofUndoings = undoings.Select(u => u.Transaction).ToHashSet();
        foreach (var undoing in undoings)
        {
            if (!transactions.Contains(undoing.Undoes) || undoing.Undoes >= undoing.Transaction)
                _problems[undoing.Number] = $"there is no transaction {undoing.Undoes} to undo";
            else if (ofUndoings.Contains(undoing.Undoes))
                _problems[undoing.Number] = $"transaction {undoing.Undoes} is itself an undoing; book anew what is wanted";
            else if (!_undone.Add(undoing.Undoes))
                _problems[undoing.Number] = $"transaction {undoing.Undoes} is already undone";
        }
    }

    private void FindCorrections(IReadOnlyList<Entry> entries)
    {
        foreach (var correction in entries.OfType<Corrected>().Where(c => !_undone.Contains(c.Transaction)))
        {
            var target = _byNumber.GetValueOrDefault(correction.Entry);
            if (target is null || target.Number >= correction.Number)
                _problems[correction.Number] = $"there is no entry {correction.Entry} to correct";
            else if (target is Corrected or Undone)
                _problems[correction.Number] = $"entry {correction.Entry} is a line {target.Kind}; correct the entry it speaks of";
            else if (_undone.Contains(target.Transaction))
                _problems[correction.Number] = $"entry {correction.Entry}, corrected by entry {correction.Number}, is undone";
            else if (_corrections.TryGetValue(target.Number, out var list))
                list.Add(correction);
            else
                _corrections[target.Number] = [correction];
        }
    }

    private Entry Amended(Entry entry)
    {
        if (!_corrections.TryGetValue(entry.Number, out var corrections))
            return entry;
        foreach (var correction in corrections)
        {
            try
            {
                entry = EntryCodec.Amend(entry, correction.Changes);
            }
            catch (BookRefusal refusal)
            {
                _problems.TryAdd(correction.Number, refusal.Message);
            }
        }

        return entry;
    }
}
