using Stockroom.Book;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Book.States;
using Stockroom.Storage.Disks;
using Stockroom.Storage.Readings;
using Stockroom.Storage.Snapshots;

namespace Stockroom.Storage;

/// <summary>
/// A book opened for the screens, to read. What its snapshot says is there at once, over a journal whose chain was followed
/// line by line; entries, LiteDB and the snapshot itself are verified behind it. Where there is no snapshot of use, the
/// whole is verified first. Writing never rests on a snapshot.
/// </summary>
public sealed class BookOnSight : IStockBook, IDisposable
{
    private readonly BookState _seen;
    private readonly int _entries;
    private readonly Task<Verified> _verified;

    private BookOnSight(string folder, BookState seen, int entries, Task<Verified> verified)
    {
        (Folder, _seen, _entries, _verified) = (folder, seen, entries, verified);
        Whole = verified.IsCompleted ? Task.CompletedTask : verified.ContinueWith(static _ => { }, TaskScheduler.Default);
    }

    public string Folder { get; }

    /// <summary>Ends when everything is verified, or could not be; it never throws.</summary>
    public Task Whole { get; }

    /// <summary>What does not hold, a line each; empty as long as nothing was found.</summary>
    public IReadOnlyList<string> Damage => Result is { } verified ? verified.Damage : [];

    /// <summary>True where the record could not be read after all, so that there are no entries to show.</summary>
    public bool HasNoLedger => Result is { Book: null };

    /// <summary>Another number when what is shown has changed.</summary>
    public long Version => _entries + (Result is { IsAsSeen: false } ? 1 : 0);

    /// <inheritdoc/>
    public BookState State => Result?.Book?.Ledger.State ?? _seen;

    /// <summary>The entries; waits until they are verified.</summary>
    /// <exception cref="BookUnavailableException">They cannot be read.</exception>
    public Ledger Ledger => Book.Ledger;

    private Verified? Result => _verified.IsCompleted ? _verified.Result : null;

    private StockBook Book => _verified.Result is { Book: { } book } ? book : throw new BookUnavailableException(BookFault.Damaged, _verified.Result.Damage[0]);

    /// <summary>Opens a book to be shown; a damaged one as far as it holds.</summary>
    /// <exception cref="BookUnavailableException">There is no book, or nothing of it can be read.</exception>
    public static BookOnSight Open(string folder) => Open(LocalDisk.Instance, folder);

    /// <summary>A book that was verified whole already.</summary>
    public static BookOnSight Of(StockBook whole) =>
        new(whole.Folder, whole.Ledger.State, whole.Ledger.Entries.Count, Task.FromResult(new Verified(whole, whole.Damage, IsAsSeen: true)));

    /// <inheritdoc/>
    /// <exception cref="BookUnavailableException">The book is open to read only, or does not hold.</exception>
    public IReadOnlyList<Entry> Append(Transaction transaction) => Damage.Count == 0
        ? Book.Append(transaction)
        : throw BookUnavailableException.DoesNotHold(Folder, Damage[0]);

    /// <summary>Lets go of the book; a verification that still runs ends by itself.</summary>
    public void Dispose() => _ = _verified.ContinueWith(static v => v.Result.Book?.Dispose(), TaskScheduler.Default);

    internal static BookOnSight Open(IDisk disk, string folder)
    {
        var files = StockBookFolder.Find(disk, folder);
        StockBook Whole() => StockBookFolder.OpenDamaged(disk, folder);
        return AtSight(disk, files) is { } sight
            ? new BookOnSight(files.Folder, sight.State, sight.Entries, Task.Run(() => Verify(Whole, sight.State, sight.Entries)))
            : Of(Whole());
    }

    // Null where the whole must be verified first; whatever the trouble is, that will say it.
    private static (BookState State, int Entries)? AtSight(IDisk disk, BookFiles files)
    {
        try
        {
            var identity = BookIdentity.Read(disk, files);
            if (new SnapshotFile(disk, files, identity).Read().Snapshot is not { } snapshot)
                return null;
            using var journal = disk.Open(files.Journal, Opening.Read);
            return LineChain.Follow(journal, identity.GenesisHash, snapshot) is { } chain && snapshot.State().After(chain.Entries) is { } state
                ? (state, chain.Count)
                : null;
        }
        catch (Exception e) when (DiskFaults.IsOfTheDisk(e) || e is BookUnavailableException or FormatException)
        {
            return null;
        }
    }

    private static Verified Verify(Func<StockBook> open, BookState seen, int entries)
    {
        StockBook book;
        try
        {
            book = open();
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            return new Verified(null, [DiskFaults.OneLine(e.Message)], IsAsSeen: false);
        }

        if (book.Damage.Count > 0)
            return new Verified(book, book.Damage, IsAsSeen: false);
        var ledger = book.Ledger;
        var then = ledger.Entries.Count == entries ? ledger.State : Ledger.Of("", ledger.Entries.Take(entries)).State;
        return StateCodec.Encode(then).AsSpan().SequenceEqual(StateCodec.Encode(seen))
            ? new Verified(book, [], ledger.Entries.Count == entries)
            : new Verified(book, ["the snapshot said otherwise than the journal; what is shown now is what the journal says"], IsAsSeen: false);
    }

    private sealed record Verified(StockBook? Book, IReadOnlyList<string> Damage, bool IsAsSeen);
}
