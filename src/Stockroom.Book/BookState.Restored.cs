using Stockroom.Book.Containers;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Book.Places;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Book;

public sealed partial record BookState
{
    /// <summary>
    /// The state after entries that follow on, without the entries before them: null where that takes those too, as for a
    /// correction or an entry of an earlier day than what it touches.
    /// </summary>
    public BookState? After(IEnumerable<Entry> following)
    {
        var state = this;
        try
        {
            foreach (var entry in following)
            {
                state = state.Reserving(entry);
                if (Ledger.ComesLate(entry, state))
                    return null;
                Rules.Check(entry, state);
                state = entry.Apply(state);
            }

            return state;
        }
        catch (BookRefusal)
        {
            return null;
        }
    }

    /// <summary>A state read back from where it was kept.</summary>
    internal static BookState Restored(long nextSerial, string classTable, IEnumerable<Place> places, IEnumerable<OwnSubstance> own, IEnumerable<Container> containers) => new()
    {
        NextSerial = nextSerial,
        ClassTable = classTable,
        Places = Empty.Places.AddRange(places.Select(p => KeyValuePair.Create(p.Id, p))),
        OwnSubstances = Empty.OwnSubstances.AddRange(own.Select(o => KeyValuePair.Create(o.Substance.Name, o))),
        Containers = Empty.Containers.AddRange(containers.Select(c => KeyValuePair.Create(c.Id, c))),
    };
}
